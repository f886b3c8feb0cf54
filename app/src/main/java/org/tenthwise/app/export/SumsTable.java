package org.tenthwise.app.export;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.series.AskedSum;
import org.tenthwise.app.series.CapabilityShown;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.Drift;
import org.tenthwise.app.series.Mean;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Rejects;
import org.tenthwise.app.series.SegmentSums;
import org.tenthwise.app.series.Track;
import org.tenthwise.model.words.Word;

/**
 * What the parts between two breaks show, as a table for a spreadsheet: RFC 4180, a row for each characteristic and
 * segment; two where parts have several sizes, of the least and of the greatest. Figures are those the batch of sums
 * writes for the same sizes; what so few parts do not show is an empty cell, and the words beside say why.
 */
public final class SumsTable {

    private static final List<String> HEAD = List.of(
            "part",
            "number",
            "characteristic",
            "designator",
            "from_place",
            "from_serial",
            "to_serial",
            "since",
            "size",
            "unit",
            "lower_limit",
            "upper_limit",
            "counted",
            "rejects",
            "unproven",
            "still_to_cut",
            "reject_rate_upper",
            "side",
            "parts",
            "mean",
            "sd",
            "drift",
            "slope",
            "slope_low",
            "slope_high",
            "missed",
            "measure_before",
            "chart_standing",
            "chart_lower",
            "chart_centre",
            "chart_upper",
            "capability",
            "required",
            "cpk",
            "cpk_low",
            "cpk_high",
            "tolerance_used");

    /** Rounded up: what may have been missed is never said to be less. */
    private static final int PLACES_OF_A_CHANCE = 3;

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public SumsTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    /** @param since what broke the series before the segment; empty before the first part */
    public void write(Characteristic characteristic, String since, SegmentSums sums) throws IOException {
        if (sums.tracks().isEmpty()) {
            head(characteristic, since, sums)
                    .empty(HEAD.size() - HEAD.indexOf("side"))
                    .print(printer);
        }
        for (Track track : sums.tracks()) {
            ViewRow row = head(characteristic, since, sums).word(track.side()).plain(track.n());
            row.plain(written(track.mean().map(Mean::asked), "mean"))
                    .plain(written(
                            track.mean().filter(mean -> mean.sd().isPresent()).map(Mean::asked), "sd"));
            drift(row, track.drift());
            Optional<AskedSum> limits = track.limits().map(ControlLimits::asked);
            List.of("standing", "lower", "centre", "upper").forEach(key -> row.plain(written(limits, key)));
            capability(row, track.capability());
            row.print(printer);
        }
    }

    private static ViewRow head(Characteristic characteristic, String since, SegmentSums sums) {
        List<PartPoint> points = sums.segment().points();
        Rejects rejects = sums.rejects();
        return new ViewRow()
                .characteristic(characteristic)
                .plain(sums.segment().from() + 1)
                .text(points.get(0).run().serial())
                .text(points.get(points.size() - 1).run().serial())
                .plain(since)
                .word(sums.of())
                .limits(points.get(0).limits())
                .plain(rejects.n())
                .plain(rejects.rejects())
                .plain(rejects.unproven())
                .plain(rejects.stillToCut())
                .plain(written(rejects.rate().map(Rejects.Rate::asked), "upper"));
    }

    private static void drift(ViewRow row, Drift drift) {
        row.word(drift.shown());
        List.of("slope", "slope_low", "slope_high").forEach(key -> row.plain(written(drift.asked(), key)));
        row.plain(drift.missed()
                        .map(share -> new BigDecimal(share)
                                .setScale(PLACES_OF_A_CHANCE, RoundingMode.CEILING)
                                .toPlainString())
                        .orElse(""))
                .plain(drift.measureBefore().map(String::valueOf).orElse(""));
    }

    private static void capability(ViewRow row, CapabilityShown shown) {
        row.plain(Word.of(shown.standing())).figure(Optional.of(shown.required()));
        List.of("cpk", "cpk_low", "cpk_high").forEach(key -> row.plain(written(shown.asked(), key)));
        row.plain(shown.furthest()
                .map(furthest -> ShareFigures.rounded(furthest.used(), BigDecimal.ONE, ShareFigures.PLACES_OF_A_SHARE))
                .orElse(""));
    }

    private static String written(Optional<AskedSum> asked, String key) {
        return asked.map(one -> one.written(key)).orElse("");
    }
}
