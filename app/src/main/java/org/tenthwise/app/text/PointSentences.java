package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.PartStanding;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/** One part at one characteristic, in lines: what it came to, by which limits, with what, by whom, where and when. */
public final class PointSentences {

    private final Words words;

    public PointSentences(Words words) {
        this.words = words;
    }

    /** The size with its unit, as many decimals as it has. */
    public String size(PartPoint point, SizeOf of) {
        return Figures.withUnit(figure(point, point.size(of).judged()), point.unit());
    }

    /** The same without its unit. */
    public String figure(PartPoint point, SizeOf of) {
        return figure(point, point.size(of).judged());
    }

    private static String figure(PartPoint point, Length size) {
        List<Length> limits = Stream.of(point.limits().lower(), point.limits().upper())
                .flatMap(Optional::stream)
                .map(Written::length)
                .toList();
        return Figures.beside(limits, size, point.unit(), point.places());
    }

    /** All there is to say beside the size and its verdict. */
    public List<String> about(PartPoint point, SizeOf of) {
        List<String> lines = new ArrayList<>();
        PartSize size = point.size(of);
        if (!size.isOne()) {
            lines.add(words.say("history.point.sizes", figure(point, size.least()), figure(point, size.greatest())));
        }
        lines.add(words.say("history.point.limits", limits(point.limits())));
        if (!point.asCut().judged().equals(point.finish().judged())) {
            SizeOf other = of == SizeOf.FINAL ? SizeOf.AS_CUT : SizeOf.FINAL;
            lines.add(words.say(
                    words.key("history.point", other),
                    figure(point, point.size(other).judged())));
        }
        point.place(of).map(place -> new PlaceWords(words).of(point, of, place)).ifPresent(lines::add);
        if (!point.gauges().isEmpty()) {
            lines.add(words.list(point.gauges().stream().map(this::gauge).toList()));
        }
        lines.add(words.list(point.people()));
        lines.add(new Dates(words).dayAndHour(point.at()));
        lines.addAll(aboutTheRun(point));
        return lines;
    }

    /** A shop's own kind by the name it has there. */
    private String gauge(ReadingSummary.GaugeMark gauge) {
        String kind = GaugeKind.ofKey(gauge.kind())
                .map(known -> GaugeWords.kind(words, known))
                .orElse(gauge.kind());
        return words.say("gauge-line.direct", gauge.mark(), kind);
    }

    private List<String> aboutTheRun(PartPoint point) {
        List<String> lines = new ArrayList<>();
        Stream.of(point.run().machine(), lot(point))
                .filter(said -> !said.isBlank())
                .forEach(lines::add);
        if (point.cuts() > 0) {
            lines.add(words.say("history.point.cuts", point.cuts()));
        }
        if (point.timesMeasured() > 1) {
            lines.add(words.say("history.point.times", point.timesMeasured()));
        }
        if (point.standing() == PartStanding.CONCEDED) {
            lines.add(words.say("history.point.conceded"));
        }
        if (point.outBefore()) {
            lines.add(words.say("history.point.out-before"));
        }
        if (point.open()) {
            lines.add(words.say("history.point.open"));
        }
        return lines;
    }

    private String lot(PartPoint point) {
        return point.run().lot().isBlank()
                ? ""
                : words.say("history.point.lot", point.run().lot());
    }

    /** Both limits or the one there is, with the unit. */
    public String limits(Limits limits) {
        return limits.lower()
                .map(lower -> limits.upper()
                        .map(upper -> words.say("history.limits.both", Figures.written(lower), Figures.withUnit(upper)))
                        .orElseGet(() -> words.say("history.limits.least", Figures.withUnit(lower))))
                .orElseGet(() -> words.say(
                        "history.limits.most", Figures.withUnit(limits.upper().orElseThrow())));
    }
}
