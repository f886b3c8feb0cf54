package org.tenthwise.app.sums.decision;

import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.uncertainty.GuardBand;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

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
            throw new CannotAnswer(Message.of("given.no-limit"));
        }
        if (lower.isPresent()
                && upper.isPresent()
                && lower.get().length().isAbove(upper.get().length())) {
            throw new CannotAnswer(
                    LOWER, "above-upper", lower.get().text(), upper.get().text());
        }
        return new Limits(lower, upper);
    }

    static Length guardBand(SumInput given, Limits limits) {
        Length guardBand = given.find(GUARD_BAND).orElse(Length.ZERO);
        if (GuardBand.leavesNothing(limits, guardBand)) {
            throw new CannotAnswer(GUARD_BAND, "too-wide", given.text(GUARD_BAND));
        }
        return guardBand;
    }

    private static Written written(SumInput given, Input<Length> limit) {
        String plain = given.figure(limit).stripTrailingZeros().toPlainString();
        if (!Written.isPlainDecimal(plain)) {
            throw new CannotAnswer(limit, Message.of("given.too-many-figures", limit, given.text(limit)));
        }
        return new Written(plain, given.inUnit());
    }
}
