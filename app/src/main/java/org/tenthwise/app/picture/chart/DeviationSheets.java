package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.ControlLimits;
import org.tenthwise.app.series.DeviationChart;
import org.tenthwise.app.series.DeviationChart.OffTarget;
import org.tenthwise.app.series.PartPoint;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.PlaceWords;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.app.text.SeriesSentences.About;
import org.tenthwise.app.text.SeriesSentences.Told;
import org.tenthwise.app.text.SeriesSentences.Weight;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/**
 * Different sizes on one picture, each by how far it lies from the middle of its limits; where their spreads differ, in
 * per cent of half the tolerance. Used on the thread of the ledger.
 */
public final class DeviationSheets {

    private static final int PERCENT = 2;
    private static final int FEWEST_FOR_LIMITS = 10;

    /** In half tolerances: beyond it a per cent says nothing that anybody can picture. */
    private static final BigDecimal FAR = BigDecimal.valueOf(2);

    private final SeriesSums sums;
    private final Words words;
    private final SeriesCharts charts;
    private final SeriesSentences sentences;

    public DeviationSheets(SeriesSums sums, Words words) {
        this.sums = sums;
        this.words = words;
        this.charts = new SeriesCharts(words);
        this.sentences = new SeriesSentences(words);
    }

    /**
     * @param found the characteristics that are looked for
     * @param across breaks that the limits run across
     * @param at place of the entry that is looked at; the last one where absent
     */
    public CourseSheet of(List<Series> found, Sought sought, SizeOf which, Set<Break.Reason> across, OptionalInt at) {
        DeviationChart chart = DeviationChart.of(found, which);
        List<OffTarget> all = chart.entries();
        Series shown = new Series(
                new Characteristic("", Optional.empty(), 0, words.say("history.deviations"), Optional.empty()),
                all.stream().map(OffTarget::point).toList(),
                chart.breaks(),
                List.of(),
                false);
        OptionalInt place = all.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(Math.min(at.orElse(all.size() - 1), all.size() - 1));
        int back = place.isPresent() ? (all.size() - 1 - place.getAsInt()) / SeriesCharts.WINDOW : 0;
        int to = all.size() - back * SeriesCharts.WINDOW;
        int from = Math.max(0, to - SeriesCharts.WINDOW);
        List<OffTarget> since = chart.sinceTheLastBreak(across);
        boolean picked = sought.picksByResult();
        Optional<ControlLimits> limits =
                picked || since.isEmpty() ? Optional.empty() : sums.of(since, chart.spreadsDiffer());
        return new CourseSheet(
                shown,
                from,
                place,
                picture(chart, shown, from, to, place, limits, all.size() - since.size()),
                all.isEmpty()
                        ? ""
                        : picked
                                ? words.say("history.picked")
                                : sentences.sinceOfSizes(all.size() - since.size() + 1, all.size(), all.size()),
                all.isEmpty() || picked ? List.of() : told(chart, which, since, limits),
                List.of(),
                chart.leftOut().stream()
                        .map(one -> words.say("history.deviations.left-out", one.number(), one.name()))
                        .toList());
    }

    private List<Told> told(DeviationChart chart, SizeOf which, List<OffTarget> since, Optional<ControlLimits> limits) {
        String said = limits.map(found -> limits(chart, found))
                .orElseGet(() -> words.say(
                        since.size() < FEWEST_FOR_LIMITS
                                ? "history.deviations.process.none"
                                : "history.deviations.process.coarse",
                        since.size()));
        String scale = chart.spreadsDiffer() ? words.say("history.deviations.standardised") + " " : "";
        return List.of(sentences.told(About.LIMITS, which, scale + said, Weight.PLAIN));
    }

    private String limits(DeviationChart chart, ControlLimits found) {
        return words.say(
                words.key("history.deviations.process", found.standing()),
                found.n(),
                figure(chart, found.lower(), places(chart) + 1),
                withUnit(chart, figure(chart, found.upper(), places(chart) + 1)),
                withUnit(chart, figure(chart, found.centre(), places(chart) + 1)));
    }

    /** A per cent has its sign already. */
    private static String withUnit(DeviationChart chart, String figure) {
        return chart.spreadsDiffer()
                ? figure
                : Figures.withUnit(figure, chart.unit().orElseThrow());
    }

    private static int places(DeviationChart chart) {
        return chart.spreadsDiffer()
                ? 0
                : chart.entries().stream()
                        .mapToInt(entry -> entry.point().places())
                        .max()
                        .orElse(0);
    }

    /** In the unit, or in per cent of half the tolerance. */
    private static BigDecimal value(DeviationChart chart, BigDecimal figure) {
        return chart.spreadsDiffer() ? figure.movePointRight(PERCENT) : figure;
    }

    private static String figure(DeviationChart chart, BigDecimal figure, int places) {
        BigDecimal value = value(chart, figure);
        String text = Figures.number(value.setScale(places, RoundingMode.HALF_EVEN));
        String signed = value.signum() > 0 ? "+" + text : text;
        return chart.spreadsDiffer() ? signed + "\u00a0%" : signed;
    }

    private CoursePicture picture(
            DeviationChart chart,
            Series shown,
            int from,
            int to,
            OptionalInt place,
            Optional<ControlLimits> limits,
            int since) {
        List<OffTarget> entries = chart.entries().subList(from, to);
        List<MadePart> spots = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            OffTarget entry = entries.get(i);
            BigDecimal off = chart.spreadsDiffer() ? entry.standardised() : entry.deviation();
            spots.add(new MadePart(
                    String.valueOf(from + i + 1),
                    Optional.empty(),
                    Optional.of(new ChartFigure(value(chart, off), text(chart, entry, off))),
                    Optional.empty(),
                    entry.point().verdict()));
        }
        return new CoursePicture(
                spots,
                allowed(chart, entries),
                shown.breaks().stream()
                        .filter(mark -> mark.before() > from && mark.before() < to)
                        .map(mark -> new BreakMark(mark.before() - from, sentences.broken(mark, shown)))
                        .toList(),
                entries.isEmpty() ? Optional.empty() : Optional.of(new ChartFigure(BigDecimal.ZERO, "0")),
                limits.filter(found -> since < to)
                        .map(found -> process(chart, found, Math.max(0, since - from), to - from)),
                Optional.empty(),
                place.isPresent() ? OptionalInt.of(place.getAsInt() - from) : place,
                places(chart),
                charts.courseWords(words.say("history.entry")),
                words.say("history.course.spoken", words.say("history.deviations"), entries.size()));
    }

    /** Far out it is said by how far. */
    private String text(DeviationChart chart, OffTarget entry, BigDecimal off) {
        if (!chart.spreadsDiffer() || off.abs().compareTo(FAR) <= 0) {
            return figure(chart, off, places(chart));
        }
        PartPoint point = entry.point();
        Limits limits = point.limits();
        Length half = limits.upper().orElseThrow().length().minus(limits.middle());
        Length beyond = Length.of(entry.deviation().abs(), point.unit()).minus(half);
        return new PlaceWords(words).out(beyond, point.unit(), point.places());
    }

    private ProcessLimits process(DeviationChart chart, ControlLimits found, int from, int to) {
        return new ProcessLimits(
                from,
                to - 1,
                value(chart, found.lower()),
                value(chart, found.centre()),
                value(chart, found.upper()),
                found.standing() == LimitsStanding.TRIAL,
                limits(chart, found));
    }

    /** Half the tolerance either way, and so 100 % where that is what is drawn. */
    private static List<AllowedSizes> allowed(DeviationChart chart, List<OffTarget> entries) {
        List<AllowedSizes> all = new ArrayList<>();
        Unit unit = chart.unit().orElse(Unit.MILLIMETRE);
        for (int i = 0; i < entries.size(); i++) {
            Limits limits = entries.get(i).point().limits();
            BigDecimal half = chart.spreadsDiffer()
                    ? BigDecimal.ONE
                    : limits.upper()
                            .orElseThrow()
                            .length()
                            .minus(limits.middle())
                            .in(unit);
            int places = chart.spreadsDiffer()
                    ? 0
                    : Math.max(places(chart), half.stripTrailingZeros().scale());
            AllowedSizes now = new AllowedSizes(
                    i,
                    Optional.of(new ChartFigure(value(chart, half.negate()), figure(chart, half.negate(), places))),
                    Optional.of(new ChartFigure(value(chart, half), figure(chart, half, places))),
                    BigDecimal.ZERO);
            if (all.isEmpty() || !all.get(all.size() - 1).allowsTheSame(now)) {
                all.add(now);
            }
        }
        return all;
    }
}
