package org.tenthwise.app.session;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * A coarse gate for slips of the finger: a missing point, a reading in the other unit, a turn of the dial missed.
 *
 * <p>A size is far off when it lies more than a quarter of its nominal away, a comparing gauge when it has moved more than
 * one millimetre from its zero, a run-out indicator when it has moved more than a hundred times the limit, a master or a
 * wire when it lies more than a hundredth from its nominal. Common practice; it never refuses, it only asks.
 */
final class Plausible {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
    private static final BigDecimal HUNDRED = new BigDecimal("100");
    private static final Length ONE_TURN = Length.of("1", Unit.MILLIMETRE);
    private static final Length LEAST_ROOM_OF_A_MASTER = Length.of("0.02", Unit.MILLIMETRE);

    private Plausible() {
    }

    /**
     * @param read what was typed
     * @param zero what the gauge read on its master, for a gauge that compares
     */
    static boolean reading(Plan plan, Check check, Length read, Optional<Length> zero) {
        if (zero.isPresent()) {
            return within(read, zero.get(), ONE_TURN);
        }
        if (check instanceof Check.RunOut runOut) {
            return within(read, Length.ZERO, runOut.limit().length().times(HUNDRED));
        }
        if (check instanceof Check.Size size) {
            return near(read, size.limits().middle());
        }
        if (check instanceof Check.OverWires wires) {
            return near(read, wires.thread().diameter());
        }
        return !(check instanceof Check.PlugFit fit)
                || !(plan.step(fit.boreStep()).check() instanceof Check.Size bore)
                || near(read, bore.limits().middle());
    }

    static boolean certified(Length typed, Length nominal) {
        return within(typed, nominal, Length.greatest(List.of(nominal.times(HUNDREDTH), LEAST_ROOM_OF_A_MASTER)));
    }

    private static boolean near(Length read, Length nominal) {
        return within(read, nominal, Length.greatest(List.of(nominal.abs().times(QUARTER), ONE_TURN)));
    }

    private static boolean within(Length read, Length from, Length room) {
        return !read.minus(from).abs().isAbove(room);
    }
}
