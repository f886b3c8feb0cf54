package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.text.PointSentences;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.words.Words;

/** A line for every part of a series, and one wherever it is broken. */
final class PartTable {

    private static final Column NUMBER = Column.words("history.part", PageFlow.LEFT, 36);
    private static final Column SERIAL = Column.words("history.column.serial", 86, 92);
    private static final Column WHEN = Column.words("history.column.when", 184, 104);
    private static final Column AS_CUT = Column.figures("history.size.as-cut", 346, 62);
    private static final Column FINAL = Column.figures("history.size.final", 412, 62);
    private static final Column LIMITS = Column.words("history.column.limits", 422, 128);
    private static final double SHAPE = 557;
    private static final Column VERDICT = Column.words("record.column.verdict", 568, 74);
    private static final Column BY = Column.words("history.column.by", 648, PageFlow.RIGHT - 648);
    private static final Column ALL = Column.words("", PageFlow.LEFT, PageFlow.WIDTH);

    private final Words words;
    private final PageFlow flow;
    private final boolean several;
    private final PointSentences points;
    private final SeriesSentences sentences;

    /** @param several whether each part has to say which characteristic it is of */
    PartTable(Words words, PageFlow flow, boolean several) {
        this.several = several;
        this.words = words;
        this.flow = flow;
        this.points = new PointSentences(words);
        this.sentences = new SeriesSentences(words);
    }

    void add(Series series) {
        if (series.points().isEmpty()) {
            return;
        }
        flow.need(80);
        head();
        for (int i = 0; i < series.points().size(); i++) {
            int place = i;
            series.breaks().stream().filter(mark -> mark.before() == place).forEach(mark -> broken(mark, series));
            row(i + 1, series.points().get(i)).into(flow, this::head);
        }
    }

    private void head() {
        flow.down(4);
        flow.head(List.of(NUMBER, SERIAL, WHEN, AS_CUT, FINAL, LIMITS, VERDICT, BY), words::say, 4, Strokes.MEDIUM);
    }

    private void broken(Break mark, Series series) {
        new Row(flow.wrapping())
                .text(ALL, words.say("history.break.line", sentences.broken(mark, series)), Style.SMALL_BOLD)
                .into(flow, this::head);
    }

    private Row row(int number, PartPoint point) {
        Row row = new Row(flow.wrapping())
                .text(NUMBER, String.valueOf(number), Style.BOLD)
                .text(SERIAL, point.run().serial(), Style.BOLD)
                .text(SERIAL, point.run().lot(), Style.SMALL)
                .text(WHEN, new Dates(words).dayAndHour(point.at()), Style.TEXT)
                .text(AS_CUT, points.figure(point, SizeOf.AS_CUT), Style.TEXT)
                .text(FINAL, points.figure(point, SizeOf.FINAL), Style.BOLD)
                .text(LIMITS, points.limits(point.limits()), Style.TEXT)
                .text(VERDICT, words.say("verdict", point.verdict()), Style.BOLD.in(VerdictRole.of(point.verdict())))
                .text(BY, words.list(point.people()), Style.TEXT)
                .text(BY, with(point), Style.SMALL);
        if (several) {
            row.text(SERIAL, point.step().name(), Style.SMALL);
        }
        return row.ornament(
                (drawing, middle) -> VerdictShape.draw(drawing, point.verdict(), new Point(SHAPE, middle), 6));
    }

    private String with(PartPoint point) {
        return words.list(Stream.concat(
                        point.gauges().stream().map(GaugeMark::mark),
                        Stream.of(point.run().machine()))
                .filter(said -> !said.isBlank())
                .toList());
    }
}
