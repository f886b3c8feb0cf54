package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.series.Break.Reason;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** Finds where a series is broken, and by what. */
final class Breaks {

    private Breaks() {}

    /** @param points in the order the parts were made */
    static List<Break> of(List<PartPoint> points, ToolsOfParts tools) {
        List<Break> breaks = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Set<Reason> reasons = reasons(points.get(i - 1), points.get(i), tools);
            if (!reasons.isEmpty()) {
                breaks.add(new Break(i, reasons));
            }
        }
        return breaks;
    }

    private static Set<Reason> reasons(PartPoint before, PartPoint after, ToolsOfParts tools) {
        Set<Reason> reasons = EnumSet.noneOf(Reason.class);
        add(reasons, Reason.LIMITS, !haveSameLimits(before, after));
        add(reasons, Reason.KIND, !isSame(before, after, point -> point.found().kind()));
        add(
                reasons,
                Reason.REQUIREMENT,
                !isSame(before, after, point -> point.step().name())
                        || !isSame(before, after, point -> point.found().requirement()));
        add(reasons, Reason.REVISION, !isSame(before, after, point -> point.run()
                .revision()));
        add(
                reasons,
                Reason.PLAN_ISSUE,
                !before.run().planHash().equals(after.run().planHash()));
        add(reasons, Reason.MACHINE, !isSame(before, after, point -> point.run().machine()));
        add(reasons, Reason.LOT, !isSame(before, after, point -> point.run().lot()));
        add(
                reasons,
                Reason.GAUGE,
                !before.gauges().equals(after.gauges())
                        && !Set.copyOf(before.gauges()).equals(Set.copyOf(after.gauges())));
        add(
                reasons,
                Reason.PERSON,
                !before.people().equals(after.people())
                        && !names(before.people()).equals(names(after.people())));
        add(reasons, Reason.OFFSET, after.cuts() > 0);
        add(
                reasons,
                Reason.TOOL,
                tools.changedBetween(
                        before.entry(), after.entry(), after.found().operation()));
        add(
                reasons,
                Reason.ORDER,
                after.entry() <= before.entry() || !before.run().isOfOneStoreWith(after.run()));
        return reasons;
    }

    private static void add(Set<Reason> reasons, Reason reason, boolean there) {
        if (there) {
            reasons.add(reason);
        }
    }

    private static boolean haveSameLimits(PartPoint before, PartPoint after) {
        return before.found().bounds() == after.found().bounds() && haveSameLimits(before.limits(), after.limits());
    }

    private static boolean haveSameLimits(Limits before, Limits after) {
        return before.equals(after)
                || before.unit().equals(after.unit())
                        && length(before.lower()).equals(length(after.lower()))
                        && length(before.upper()).equals(length(after.upper()));
    }

    private static Optional<Length> length(Optional<Written> limit) {
        return limit.map(Written::length);
    }

    /** Whether both are the same dimension to the same limits. */
    static boolean areSame(StepSummary one, SizeSummary ofOne, StepSummary other, SizeSummary ofOther) {
        return ofOne.kind().equals(ofOther.kind())
                && ofOne.bounds() == ofOther.bounds()
                && haveSameLimits(one.limits().orElseThrow(), other.limits().orElseThrow());
    }

    private static boolean isSame(PartPoint before, PartPoint after, Function<PartPoint, String> what) {
        String one = what.apply(before);
        String other = what.apply(after);
        return one.equals(other) || one.strip().equalsIgnoreCase(other.strip());
    }

    private static Set<String> names(Collection<String> people) {
        return people.stream()
                .map(person -> person.strip().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }
}
