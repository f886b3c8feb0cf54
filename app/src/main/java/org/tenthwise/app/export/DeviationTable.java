package org.tenthwise.app.export;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.DeviationChart;
import org.tenthwise.app.series.DeviationChart.OffTarget;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;

/**
 * Parts of several sizes by their deviation from target, as a table for a spreadsheet: RFC 4180, a row for each part in
 * the order made. Standardised figures have four places, half the tolerance being 1. The limits of the chart stand
 * beside the parts since the last break that is not looked across; there are none below ten parts, nor of deviations
 * where spreads differ.
 */
public final class DeviationTable {

    private static final List<String> HEAD = List.of(
            "part",
            "number",
            "characteristic",
            "designator",
            "serial",
            "lot",
            "machine",
            "run",
            "place",
            "time",
            "size",
            "unit",
            "target",
            "deviation",
            "standardised",
            "spreads_differ",
            "break",
            "chart_parts",
            "chart_standing",
            "chart_lower",
            "chart_centre",
            "chart_upper",
            "standardised_lower",
            "standardised_centre",
            "standardised_upper");

    private final CSVPrinter printer;
    private final SeriesSums sums;
    private final SizeOf which;
    private final Set<Break.Reason> across;

    /** Writes the names of the columns. */
    public DeviationTable(Appendable out, SeriesSums sums, SizeOf which, Set<Break.Reason> across) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        this.sums = sums;
        this.which = which;
        this.across = Set.copyOf(across);
        printer.printRecord(HEAD);
    }

    public void write(List<Series> all) throws IOException {
        DeviationChart chart = DeviationChart.of(all, which);
        List<OffTarget> last = chart.sinceTheLastBreak(across);
        Optional<ControlLimits> plain = chart.spreadsDiffer() ? Optional.empty() : sums.of(last, false);
        Optional<ControlLimits> standardised = sums.of(last, true);
        int from = chart.entries().size() - last.size();
        Map<Integer, String> breaks = new HashMap<>();
        chart.breaks().forEach(broken -> breaks.put(broken.before(), SeriesTable.reasons(broken)));
        for (int i = 0; i < chart.entries().size(); i++) {
            OffTarget entry = chart.entries().get(i);
            PartPoint point = entry.point();
            ViewRow row = new ViewRow()
                    .characteristic(entry.series().characteristic())
                    .run(point.run())
                    .plain(i + 1)
                    .time(point.at())
                    .word(which)
                    .plain(point.unit().symbol())
                    .size(point.limits().middle(), point.unit(), point.limits().places())
                    .figure(Optional.of(entry.deviation()))
                    .plain(ShareFigures.rounded(entry.standardised(), BigDecimal.ONE, ShareFigures.PLACES_OF_A_SHARE))
                    .plain(chart.spreadsDiffer() ? "yes" : "")
                    .plain(breaks.getOrDefault(i, ""));
            if (i >= from) {
                row.plain(last.size())
                        .plain(standardised
                                .map(limits -> limits.asked().written("standing"))
                                .orElse(""));
                limits(row, plain);
                limits(row, standardised);
            } else {
                row.empty(HEAD.size() - HEAD.indexOf("chart_parts"));
            }
            row.print(printer);
        }
    }

    private static void limits(ViewRow row, Optional<ControlLimits> limits) {
        row.figure(limits.map(ControlLimits::lower))
                .figure(limits.map(ControlLimits::centre))
                .figure(limits.map(ControlLimits::upper));
    }
}
