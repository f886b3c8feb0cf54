package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.app.series.Break.Reason;
import org.tenthwise.model.compute.statistics.Individuals;
import org.tenthwise.model.compute.statistics.ToleranceUsed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/**
 * Parts of several sizes on one chart, in the order they were made, by how far each lies from its target: the middle of
 * its limits, which for a one-sided fit is not the nominal size.
 *
 * <p>Deviation = size − middle, in the unit of the limits; standardised = deviation / (half the tolerance), a plain
 * number. Of a part with several sizes the middle between the least and the greatest stands.
 *
 * <p>Where the mean moving range of one characteristic is more than 1.3 times that of another their spreads differ, and
 * only the standardised figures belong on one chart.
 *
 * <p>Source: ISO 7870-8:2017, charts for short runs and small mixed batches with one part at a time, by its scope; D.
 * C. Montgomery, Introduction to Statistical Quality Control, deviation from nominal and standardised charts for short
 * production runs, the factor 1.3 from there, from memory.
 *
 * @param unit of the deviations; absent where nothing can be charted
 * @param entries in the order the parts were made
 * @param breaks before which of them, from 0, something changed: machine, tool, offset or order
 * @param leftOut characteristics that have no target, or another unit
 */
public record DeviationChart(
        Optional<Unit> unit,
        List<OffTarget> entries,
        List<Break> breaks,
        boolean spreadsDiffer,
        List<Characteristic> leftOut) {

    /** One part at one characteristic. */
    public record OffTarget(Series series, PartPoint point, BigDecimal deviation, BigDecimal standardised) {}

    private static final Set<Reason> OF_THE_CUT = EnumSet.of(Reason.TOOL, Reason.OFFSET, Reason.ORDER);

    private static final BigDecimal ALIKE = new BigDecimal("1.3");

    private static final int FEWEST_FOR_A_SPREAD = 3;

    public DeviationChart {
        entries = List.copyOf(entries);
        breaks = List.copyOf(breaks);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * @param which of the sizes of a part; what has no target, or another unit than the first, is left out and named
     */
    public static DeviationChart of(List<Series> all, SizeOf which) {
        Optional<Unit> unit = all.stream()
                .flatMap(series -> series.points().stream())
                .filter(DeviationChart::hasTarget)
                .map(PartPoint::unit)
                .findFirst();
        List<OffTarget> entries = new ArrayList<>();
        List<Characteristic> leftOut = new ArrayList<>();
        for (Series series : all) {
            if (!series.points().isEmpty()
                    && series.points().stream()
                            .allMatch(point -> hasTarget(point) && unit.equals(Optional.of(point.unit())))) {
                series.points().stream()
                        .filter(point -> point.standing() != PartStanding.STILL_TO_CUT)
                        .map(point -> entry(series, point, which))
                        .forEach(entries::add);
            } else {
                leftOut.add(series.characteristic());
            }
        }
        entries.sort(Comparator.comparing(OffTarget::point, SeriesOrder.AS_MADE));
        return new DeviationChart(unit, entries, breaks(all, entries), spreadsDiffer(entries), leftOut);
    }

    private static boolean hasTarget(PartPoint point) {
        return point.found().bounds() == Bounds.PLAIN
                && point.limits().width().filter(width -> width.signum() > 0).isPresent();
    }

    private static OffTarget entry(Series series, PartPoint point, SizeOf which) {
        Limits limits = point.limits();
        PartSize size = point.size(which);
        Length middle = size.isOne()
                ? size.judged()
                : size.least().plus(size.greatest()).half();
        return new OffTarget(
                series,
                point,
                point.figure(middle.minus(limits.middle())),
                ToleranceUsed.of(
                        middle.base(),
                        limits.lower().orElseThrow().length().base(),
                        limits.upper().orElseThrow().length().base()));
    }

    private static List<Break> breaks(List<Series> all, List<OffTarget> entries) {
        Map<PartPoint, Set<Reason>> own = new IdentityHashMap<>();
        all.forEach(series ->
                series.breaks().forEach(broken -> own.put(series.points().get(broken.before()), broken.reasons())));
        List<Break> breaks = new ArrayList<>();
        for (int i = 1; i < entries.size(); i++) {
            Set<Reason> reasons = ofItsOwn(entries.get(i), own);
            if (!entries.get(i)
                    .point()
                    .run()
                    .machine()
                    .strip()
                    .equalsIgnoreCase(entries.get(i - 1).point().run().machine().strip())) {
                reasons.add(Reason.MACHINE);
            }
            if (!reasons.isEmpty()) {
                breaks.add(new Break(i, reasons));
            }
        }
        return breaks;
    }

    private static Set<Reason> ofItsOwn(OffTarget entry, Map<PartPoint, Set<Reason>> own) {
        Set<Reason> reasons = EnumSet.noneOf(Reason.class);
        reasons.addAll(own.getOrDefault(entry.point(), Set.of()));
        reasons.retainAll(OF_THE_CUT);
        return reasons;
    }

    private static boolean spreadsDiffer(List<OffTarget> entries) {
        Map<Characteristic, List<BigDecimal>> figures = new HashMap<>();
        entries.forEach(entry -> figures.computeIfAbsent(entry.series().characteristic(), first -> new ArrayList<>())
                .add(entry.deviation()));
        List<BigDecimal> ranges = figures.values().stream()
                .filter(some -> some.size() >= FEWEST_FOR_A_SPREAD)
                .map(Individuals::meanMovingRange)
                .sorted()
                .toList();
        return ranges.size() > 1
                && ranges.get(ranges.size() - 1).compareTo(ranges.get(0).multiply(ALIKE)) > 0;
    }

    /** Deviations, or standardised ones, since the last break that stands. */
    public List<OffTarget> sinceTheLastBreak(Set<Reason> across) {
        int from = breaks.stream()
                .filter(broken -> broken.stands(across))
                .mapToInt(Break::before)
                .max()
                .orElse(0);
        return entries.subList(from, entries.size());
    }
}
