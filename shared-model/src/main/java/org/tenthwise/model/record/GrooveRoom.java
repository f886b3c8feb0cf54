package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;

/**
 * What the depth of a thread, where it is read since the last cut, lets come off over wires: a tool with the form of
 * the thread that takes 2 c off the pitch diameter makes the groove deeper by c. It may take no more than lies between
 * the deepest reading and the upper limit of the depth, the guard band taken off.
 *
 * <p>Source: geometry of a profile moved square to the axis.
 *
 * @param step that measures the depth
 * @param most on the pitch diameter, less than zero where it is too deep already
 */
record GrooveRoom(int step, Length most) {

    /** The least of them; absent where no depth with an upper limit is read, or nothing is proven of it. */
    static Optional<GrooveRoom> least(List<SizeFinding> grooves) {
        return grooves.stream()
                .filter(GrooveRoom::isKnown)
                .flatMap(groove -> most(groove).stream())
                .min(Comparator.comparing(GrooveRoom::most));
    }

    private static boolean isKnown(SizeFinding groove) {
        return groove.showsSizes()
                && !Plausible.spoils(groove)
                && groove.warmth().filter(heat -> heat.missing() > 0).isEmpty();
    }

    private static Optional<GrooveRoom> most(SizeFinding groove) {
        CheckOfSize depth = groove.check().asSize().orElseThrow();
        Optional<Length> deepest = depth.isOne()
                ? groove.value()
                : groove.measured().stream().map(Measured::value).max(Comparator.naturalOrder());
        return depth.limits()
                .upper()
                .map(Written::length)
                .flatMap(limit -> deepest.map(limit::minus))
                .map(room -> room.minus(depth.guardBand().length()))
                .map(room -> new GrooveRoom(groove.step().number(), room.plus(room)));
    }
}
