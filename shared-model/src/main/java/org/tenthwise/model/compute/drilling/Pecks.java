package org.tenthwise.model.compute.drilling;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The depths at which a drill is drawn back to clear the chips, down to the full depth.
 *
 * <p>The first peck goes to {@code first}; each later one goes deeper by a step, which is multiplied by {@code shrink}
 * after each peck but never falls below {@code leastStep}. The last goes to the depth, however little is left.
 *
 * <p>Depths from the mouth of the hole, rising, the last equal to the depth.
 *
 * <p>A first peck as deep as the hole is the only one.
 *
 * <p>Source: arithmetic; common practice takes two to three diameters at first, then steps of one diameter and less the
 * deeper the hole.
 *
 * @param depths at least one
 */
public record Pecks(List<Length> depths) {

    private static final int MOST = 1000;

    public Pecks {
        depths = List.copyOf(depths);
    }

    /**
     * @param shrink more than 0 and not more than 1, which leaves the steps as they are
     * @throws IllegalArgumentException if a length is not above zero, {@code shrink} is out of its bounds, the least
     *     step is more than the step, or the hole would take more than a thousand pecks
     */
    public static Pecks of(Length depth, Length first, Length step, BigDecimal shrink, Length leastStep) {
        if (depth.signum() <= 0 || first.signum() <= 0 || leastStep.signum() <= 0) {
            throw new Refused("model.pecks.depth-first", depth, first, leastStep);
        }
        if (shrink.signum() <= 0 || shrink.compareTo(BigDecimal.ONE) > 0) {
            throw new Refused("model.pecks.steps-shrink", shrink.toPlainString());
        }
        if (leastStep.isAbove(step)) {
            throw new Refused("model.pecks.least-step", leastStep, step);
        }
        List<Length> depths = new ArrayList<>();
        Length next = step;
        for (Length at = first; at.isBelow(depth); at = at.plus(next)) {
            if (!depths.isEmpty()) {
                next = Length.greatest(List.of(leastStep, next.times(shrink).dividedBy(BigDecimal.ONE)));
            }
            depths.add(at);
            if (depths.size() >= MOST) {
                throw new Refused("model.pecks.depth-would", depth, MOST, next);
            }
        }
        depths.add(depth);
        return new Pecks(depths);
    }
}
