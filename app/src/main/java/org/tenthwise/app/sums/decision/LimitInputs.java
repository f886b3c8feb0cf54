package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.uncertainty.GuardBand;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** Limits and a guard band as they were given, or why they are none. */
final class LimitInputs {

    private LimitInputs() {}

    static Limits of(SumInput given) {
        Optional<Written> lower = given.ifGiven("lower", key -> written(given, key));
        Optional<Written> upper = given.ifGiven("upper", key -> written(given, key));
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new CannotAnswer("lower and upper are missing: a verdict needs one limit at least");
        }
        if (lower.isPresent()
                && upper.isPresent()
                && lower.get().length().isAbove(upper.get().length())) {
            throw new CannotAnswer(
                    "lower",
                    "lower is %s and upper is %s: the lower limit is above the upper one"
                            .formatted(lower.get().text(), upper.get().text()));
        }
        return new Limits(lower, upper);
    }

    static Length guardBand(SumInput given, Limits limits) {
        Length guardBand =
                Length.of(given.ifGiven("guard_band", given::notNegative).orElse(BigDecimal.ZERO), given.inUnit());
        if (GuardBand.leavesNothing(limits, guardBand)) {
            throw new CannotAnswer(
                    "guard_band",
                    "guard_band is %s: it is wider than half of the tolerance, and no size would pass"
                            .formatted(given.text("guard_band")));
        }
        return guardBand;
    }

    private static Written written(SumInput given, String key) {
        String plain = given.figure(key).stripTrailingZeros().toPlainString();
        if (!Written.isPlainDecimal(plain)) {
            throw new CannotAnswer(
                    key,
                    "%s is %s: a limit has at most ten figures before the point and ten after it"
                            .formatted(key, given.text(key)));
        }
        return new Written(plain, given.inUnit());
    }
}
