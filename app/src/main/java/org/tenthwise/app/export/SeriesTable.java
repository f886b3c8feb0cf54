package org.tenthwise.app.export;

import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.NotInSeries;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.model.words.Word;

/**
 * Series over parts as a table for a spreadsheet: RFC 4180, a row for each part in the order made, and one for each run
 * that is no point of its series, with the reason. Sizes are plain decimals in the unit of the limits, texts are made
 * safe as in {@link CsvRecord}. The column {@code break} has what changed since the part before.
 */
public final class SeriesTable {

    private static final List<String> HEAD = List.of(
            "part",
            "number",
            "characteristic",
            "designator",
            "serial",
            "lot",
            "machine",
            "run",
            "revision",
            "issue",
            "unit",
            "lower_limit",
            "upper_limit",
            "verdict",
            "disposition",
            "place",
            "time",
            "as_cut",
            "as_cut_least",
            "as_cut_greatest",
            "final",
            "final_least",
            "final_greatest",
            "percent_as_cut",
            "percent_final",
            "percent_of",
            "standing",
            "cuts",
            "times_measured",
            "persons",
            "gauges",
            "break",
            "entry",
            "left_out");

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public SeriesTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    public void write(Collection<Series> all) throws IOException {
        for (Series series : all) {
            write(series);
        }
    }

    private void write(Series series) throws IOException {
        Map<Integer, String> breaks = new HashMap<>();
        series.breaks().forEach(broken -> breaks.put(broken.before(), reasons(broken)));
        for (int i = 0; i < series.points().size(); i++) {
            PartPoint point = series.points().get(i);
            ViewRow row = head(series, point.run(), point.step()).plain(i + 1).time(point.at());
            size(row, point, point.asCut());
            size(row, point, point.finish());
            row.plain(percent(point, SizeOf.AS_CUT))
                    .plain(percent(point, SizeOf.FINAL))
                    .plain(point.place(SizeOf.FINAL)
                            .map(place -> Word.of(place.scale()))
                            .orElse(""))
                    .word(point.standing())
                    .plain(point.cuts())
                    .plain(point.timesMeasured())
                    .texts(point.people())
                    .texts(point.gauges().stream().map(GaugeMark::mark).toList())
                    .plain(breaks.getOrDefault(i, ""))
                    .plain(point.entry())
                    .empty(1)
                    .print(printer);
        }
        for (NotInSeries one : series.leftOut()) {
            ViewRow row = head(series, one.run(), one.step());
            row.empty(HEAD.size() - 1 - HEAD.indexOf("place")).word(one.why()).print(printer);
        }
    }

    private static ViewRow head(Series series, RunFacts run, StepSummary step) {
        return new ViewRow()
                .characteristic(series.characteristic())
                .run(run)
                .text(run.revision())
                .text(run.stand().map(RunFacts.Stand::issue))
                .limits(step.limits().orElseThrow())
                .word(step.verdict().standing())
                .plain(step.disposed()
                        .map(disposed -> Word.of(disposed.disposition()))
                        .orElse(""));
    }

    private static void size(ViewRow row, PartPoint point, PartSize size) {
        row.size(size.judged(), point.unit(), point.places())
                .size(size.least(), point.unit(), point.places())
                .size(size.greatest(), point.unit(), point.places());
    }

    static String percent(PartPoint point, SizeOf which) {
        return point.place(which)
                .map(place -> ShareFigures.percent(place.percent()))
                .orElse("");
    }

    static String reasons(Break broken) {
        return broken.reasons().stream().map(Word::of).collect(Collectors.joining(" "));
    }
}
