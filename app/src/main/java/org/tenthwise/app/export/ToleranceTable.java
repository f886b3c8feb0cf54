package org.tenthwise.app.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/**
 * All characteristics in per cent of their tolerance, as a table for a spreadsheet: RFC 4180, a row for each
 * characteristic, a column for each part in the order the parts were begun. −100 is the lower limit, 0 the middle, +100
 * the upper; of one limit with zero below it, 0 is zero and 100 the limit; {@code percent_of} says which, {@code size}
 * whether of sizes as cut or final ones. Two places; what is rounded never comes to lie on a limit. A characteristic
 * that has no such place is there with empty cells. Where its limits changed the row says so.
 */
public final class ToleranceTable {

    private static final List<String> HEAD = List.of(
            "part",
            "number",
            "characteristic",
            "designator",
            "unit",
            "lower_limit",
            "upper_limit",
            "limits_changed",
            "size",
            "percent_of",
            "parts");

    private final CSVPrinter printer;
    private final SizeOf which;

    public ToleranceTable(Appendable out, SizeOf which) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        this.which = which;
    }

    public void write(List<Series> all) throws IOException {
        Map<String, String> parts = parts(all);
        List<String> head = new ArrayList<>(HEAD);
        parts.values().stream().map(CsvText::safe).forEach(head::add);
        printer.printRecord(head);
        for (Series series : all) {
            if (!series.points().isEmpty()) {
                write(series, parts);
            }
        }
    }

    /** Serials by the part they are of, with the lot where a serial is there twice. */
    private static Map<String, String> parts(List<Series> all) {
        Map<Long, RunFacts> runs = new TreeMap<>();
        all.stream()
                .flatMap(series -> series.points().stream())
                .forEach(point -> runs.put(point.run().begun(), point.run()));
        Map<String, Integer> often = new HashMap<>();
        Map<String, String> parts = new LinkedHashMap<>();
        runs.values().forEach(run -> parts.putIfAbsent(part(run), run.serial()));
        parts.values().forEach(serial -> often.merge(serial, 1, Integer::sum));
        runs.values().stream()
                .filter(run -> often.get(run.serial()) > 1)
                .forEach(run -> parts.put(part(run), run.part() + " " + run.serial() + " " + run.lot()));
        return parts;
    }

    private static String part(RunFacts run) {
        return String.join("\n", run.part(), run.serial(), run.lot());
    }

    private void write(Series series, Map<String, String> parts) throws IOException {
        PartPoint last = series.points().get(series.points().size() - 1);
        Limits limits = last.limits();
        ViewRow row = new ViewRow()
                .characteristic(series.characteristic())
                .limits(limits)
                .plain(
                        series.breaks().stream().anyMatch(broken -> broken.reasons().stream()
                                        .anyMatch(reason -> reason.isStop()))
                                ? "yes"
                                : "")
                .word(which)
                .plain(last.place(which).map(place -> Word.of(place.scale())).orElse(""))
                .plain(series.points().size());
        Map<String, String> percents = new HashMap<>();
        series.points().forEach(point -> percents.put(part(point.run()), SeriesTable.percent(point, which)));
        parts.keySet().forEach(part -> row.plain(percents.getOrDefault(part, "")));
        row.print(printer);
    }
}
