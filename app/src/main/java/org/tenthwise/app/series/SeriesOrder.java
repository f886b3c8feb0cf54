package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary.FollowedBy;
import org.tenthwise.app.series.Followed.OfRun;
import org.tenthwise.app.series.NotInSeries.Why;

/**
 * Puts what was found in single runs into one series: a point a part, in the order in which the parts were first
 * measured by the clock, and by the ledger where the clock says the same.
 *
 * <p>A part is told by its serial and its lot. Measured in several runs it stands where it was measured first, with the
 * size as it was cut from there and the final size from the last; the other runs are named beside the series.
 */
final class SeriesOrder {

    static final Comparator<PartPoint> AS_MADE =
            Comparator.comparing((PartPoint point) -> point.at().toInstant()).thenComparing(PartPoint::entry);

    private SeriesOrder() {}

    /** @param found of one characteristic, one at least, in the order the runs were begun */
    static Series series(List<OfRun> found, ToolsOfParts tools) {
        List<NotInSeries> leftOut = new ArrayList<>();
        Map<String, List<OfRun>> byPart = new LinkedHashMap<>();
        for (OfRun one : found) {
            Optional<Why> why = whyNot(one);
            if (why.isPresent()) {
                leftOut.add(new NotInSeries(one.run(), one.step(), why.get()));
            } else {
                byPart.computeIfAbsent(part(one.run()), first -> new ArrayList<>())
                        .add(one);
            }
        }
        List<PartPoint> points = new ArrayList<>();
        byPart.values().forEach(runs -> points.add(runs.size() == 1 ? point(runs.get(0)) : point(runs, leftOut)));
        points.sort(AS_MADE);
        return new Series(characteristic(found), points, Breaks.of(points, tools), leftOut, toolSince(points, tools));
    }

    private static boolean toolSince(List<PartPoint> points, ToolsOfParts tools) {
        return points.stream()
                .reduce((before, last) -> last)
                .filter(last -> tools.changedBetween(
                        last.entry(), Long.MAX_VALUE, last.found().operation()))
                .isPresent();
    }

    private static Optional<Why> whyNot(OfRun one) {
        if (one.run().putAway()) {
            return Optional.of(Why.PUT_AWAY);
        }
        if (one.size().asCut().isEmpty() || one.size().last().isEmpty()) {
            return Optional.of(Why.NOT_READ_TO_ITS_END);
        }
        return one.size().farOff() ? Optional.of(Why.FAR_OFF) : Optional.empty();
    }

    private static String part(RunFacts run) {
        return run.serial().isBlank()
                ? run.id()
                : String.join("\n", "", run.serial(), run.lot()).toLowerCase(Locale.ROOT);
    }

    private static PartPoint point(OfRun only) {
        return new PartPoint(
                only.run(),
                only.step(),
                only.size(),
                only.size().asCut().orElseThrow(),
                only.size().last().orElseThrow(),
                only.size().at(),
                only.size().entry(),
                1,
                false);
    }

    private static PartPoint point(List<OfRun> runs, List<NotInSeries> leftOut) {
        OfRun last = runs.stream().max(SeriesOrder::byLast).orElseThrow();
        OfRun first = runs.stream().min(SeriesOrder::byFirst).orElseThrow();
        boolean alike = Breaks.areSame(first.step(), first.size(), last.step(), last.size());
        runs.stream()
                .filter(run -> run != last)
                .forEach(run -> leftOut.add(new NotInSeries(run.run(), run.step(), Why.MEASURED_AGAIN_LATER)));
        return new PartPoint(
                last.run(),
                last.step(),
                last.size(),
                (alike ? first : last).size().asCut().orElseThrow(),
                last.size().last().orElseThrow(),
                first.size().at(),
                first.size().entry(),
                runs.size(),
                runs.stream().filter(run -> run != last).anyMatch(SeriesOrder::wasOut));
    }

    /** In one ledger by its places; of two stores, by the time each says. */
    private static int byLast(OfRun one, OfRun other) {
        return one.run().isOfOneStoreWith(other.run())
                ? Long.compare(one.size().lastEntry(), other.size().lastEntry())
                : one.run().lastAt().toInstant().compareTo(other.run().lastAt().toInstant());
    }

    private static int byFirst(OfRun one, OfRun other) {
        return one.run().isOfOneStoreWith(other.run())
                ? Long.compare(one.size().entry(), other.size().entry())
                : one.size().at().toInstant().compareTo(other.size().at().toInstant());
    }

    private static boolean wasOut(OfRun run) {
        return PartStanding.of(
                        run.run(), run.step().verdict().standing(), run.size().conceded())
                .isReject();
    }

    /** Named as the part made last names it. */
    private static Characteristic characteristic(List<OfRun> found) {
        OfRun latest = found.get(found.size() - 1);
        return new Characteristic(
                latest.run().part(),
                latest.size().followedBy() == FollowedBy.NUMBER_AND_NAME
                        ? Optional.empty()
                        : latest.step().balloon(),
                latest.step().number(),
                latest.step().name(),
                latest.step().designator());
    }
}
