package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.series.BegunSince;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.MeasureAgain;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.PastDue;
import org.tenthwise.app.series.Segment;
import org.tenthwise.app.series.SegmentSums;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Words;

/** Lays out one characteristic over the parts, for screen and print alike. Used on the thread of the ledger. */
public final class CourseSheets {

    private final SeriesSums sums;
    private final Words words;
    private final SeriesCharts charts;
    private final SeriesSentences sentences;
    private final Supplier<Optional<OffsetDateTime>> now;

    /** @param now when it is read; absent where nobody knows, as on paper */
    public CourseSheets(SeriesSums sums, Words words, Supplier<Optional<OffsetDateTime>> now) {
        this.sums = sums;
        this.now = now;
        this.words = words;
        this.charts = new SeriesCharts(words);
        this.sentences = new SeriesSentences(words);
    }

    /** What is found of it now; without a part where there is none. */
    public static Series series(History history, Sought sought, Characteristic characteristic) {
        return new Followed(history)
                .of(characteristic.in(sought)).stream()
                        .filter(some -> some.characteristic().part().equals(characteristic.part())
                                && some.characteristic().number().equals(characteristic.number())
                                && some.characteristic().name().equals(characteristic.name()))
                        .findFirst()
                        .orElseGet(() -> new Series(characteristic, List.of(), List.of(), List.of(), false));
    }

    /**
     * @param history for the plans of the runs, and for what was begun since
     * @param series what was found of one characteristic
     * @param across breaks that the sums run across
     * @param at place of the part that is looked at; the last one where absent
     */
    public CourseSheet of(
            History history, Sought sought, Series series, SizeOf which, Set<Break.Reason> across, OptionalInt at) {
        int count = series.points().size();
        OptionalInt place =
                count == 0 ? OptionalInt.empty() : OptionalInt.of(Math.min(at.orElse(count - 1), count - 1));
        int from = count == 0 ? 0 : from(series, place.orElse(0));
        int to = count == 0 ? 0 : to(series, place.orElse(0));
        Optional<SegmentSums> shown = place.isPresent() && !sought.picksByResult()
                ? Optional.of(sums.of(segment(series, across, place.getAsInt()), which, SeriesSums.USUAL_INDEX))
                : Optional.empty();
        Optional<MeasureAgain> again =
                shown.filter(some -> sought.isWhole()).flatMap(some -> again(history, series, some));
        SeriesCharts.Part part =
                new SeriesCharts.Part(series, which, from, to, place, point -> band(history, point), again, shown);
        return new CourseSheet(
                series,
                from,
                place,
                charts.course(part),
                shown.map(some -> sentences.since(series, some.segment().from(), end(some)))
                        .orElseGet(() -> count == 0 ? "" : words.say("history.picked")),
                shown.map(some -> sentences.of(
                                some, series.points().get(count - 1).places(), again))
                        .orElse(List.of()),
                shown.stream()
                        .flatMap(some -> some.tracks().stream())
                        .map(track -> charts.capability(
                                track.capability(), series.points().get(count - 1)))
                        .toList(),
                sentences.leftOut(series));
    }

    /** The window of a part: blocks from the last part backwards, and none across another dimension. */
    private static int from(Series series, int place) {
        return Math.max(start(series, place), to(series, place) - SeriesCharts.WINDOW);
    }

    private static int to(Series series, int place) {
        int end = end(series, place, series.points().size());
        return end - (end - 1 - place) / SeriesCharts.WINDOW * SeriesCharts.WINDOW;
    }

    private static int start(Series series, int place) {
        return series.breaks().stream()
                .filter(mark -> mark.reasons().contains(Break.Reason.KIND) && mark.before() <= place)
                .mapToInt(Break::before)
                .max()
                .orElse(0);
    }

    private static int end(Series series, int place, int last) {
        return series.breaks().stream()
                .filter(mark -> mark.reasons().contains(Break.Reason.KIND) && mark.before() > place)
                .mapToInt(Break::before)
                .min()
                .orElse(last);
    }

    /** Asked only where a drift is shown: what was begun since is looked for in all runs. */
    private Optional<MeasureAgain> again(History history, Series series, SegmentSums shown) {
        if (shown.tracks().stream()
                .allMatch(track -> track.drift().measureBefore().isEmpty())) {
            return Optional.empty();
        }
        PartPoint last = series.points().get(series.points().size() - 1);
        return MeasureAgain.of(
                series, shown, BegunSince.of(history, last), PastDue.isAnyOf(history, shown.segment()), now.get());
    }

    private static Segment segment(Series series, Set<Break.Reason> across, int place) {
        return series.segments(across).stream()
                .filter(some -> place < some.from() + some.points().size())
                .findFirst()
                .orElseThrow();
    }

    /** As the plan kept with the run names it. */
    private static Length band(History history, PartPoint point) {
        return history.plan(point.run())
                .flatMap(plan -> plan.step(point.step().number()).check().asDimension())
                .map(check -> check.guardBand().length())
                .orElseGet(() -> Length.of(BigDecimal.ZERO, point.unit()));
    }

    private static int end(SegmentSums shown) {
        return shown.segment().from() + shown.segment().points().size();
    }
}
