package org.tenthwise.app.sums.decision;

import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.uncertainty.GuardBand;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** Limits and a guard band as they were given, or why they are none. */
final class LimitInputs {

    static final Input<Length> LOWER = Input.length("lower").optional();
    static final Input<Length> UPPER = Input.length("upper").optional();
    static final Input<Length> GUARD_BAND =
            Input.lengthNotNegative("guard_band").usually("0");

    private LimitInputs() {}

    static Limits of(SumInput given) {
        Optional<Written> lower = given.has(LOWER) ? Optional.of(written(given, LOWER)) : Optional.empty();
        Optional<Written> upper = given.has(UPPER) ? Optional.of(written(given, UPPER)) : Optional.empty();
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new CannotAnswer("lower and upper are missing: a verdict needs one limit at least");
        }
        if (lower.isPresent()
                && upper.isPresent()
                && lower.get().length().isAbove(upper.get().length())) {
            throw new CannotAnswer(
                    LOWER,
                    "lower is %s and upper is %s: the lower limit is above the upper one"
                            .formatted(lower.get().text(), upper.get().text()));
        }
        return new Limits(lower, upper);
    }

    static Length guardBand(SumInput given, Limits limits) {
        Length guardBand = given.find(GUARD_BAND).orElse(Length.ZERO);
        if (GuardBand.leavesNothing(limits, guardBand)) {
            throw new CannotAnswer(
                    GUARD_BAND,
                    "guard_band is %s: it is wider than half of the tolerance, and no size would pass"
                            .formatted(given.text(GUARD_BAND)));
        }
        return guardBand;
    }

    private static Written written(SumInput given, Input<Length> limit) {
        String plain = given.figure(limit).stripTrailingZeros().toPlainString();
        if (!Written.isPlainDecimal(plain)) {
            throw new CannotAnswer(
                    limit,
                    "%s is %s: a limit has at most ten figures before the point and ten after it"
                            .formatted(limit, given.text(limit)));
        }
        return new Written(plain, given.inUnit());
    }
}
