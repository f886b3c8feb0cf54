package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.model.compute.statistics.ToleranceUsed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * Where a size lies in its tolerance, so that sizes of every kind can stand in one picture.
 *
 * <p>Between two limits: 100 · (size − middle) / (half the tolerance); −100 on the lower limit, 0 in the middle, +100
 * on the upper. From zero to one limit: 100 · size / limit. In per cent, without an end outside.
 *
 * <p>One limit alone has no middle, and no place is made up for it, but where zero is best and nothing can lie below: a
 * run-out, a movement. Limits that are one size, and a limit that hangs on another size of the part, give none.
 *
 * <p>Source: common practice for charts of several characteristics; {@link ToleranceUsed}.
 */
public record TolerancePlace(BigDecimal percent, Scale scale) {

    /** What a per cent is of. */
    public enum Scale {
        /** Of half the tolerance, from its middle. */
        BETWEEN_LIMITS,
        /** Of the one limit, from zero. */
        OF_ONE_LIMIT
    }

    private static final int AS_PERCENT = 2;

    static Optional<TolerancePlace> of(Length size, Limits limits, Bounds bounds) {
        Optional<Length> lower = limits.lower().map(Written::length);
        Optional<Length> upper = limits.upper().map(Written::length);
        if (bounds == Bounds.MOVING || upper.isEmpty()) {
            return Optional.empty();
        }
        if (lower.isPresent()) {
            return lower.get().isBelow(upper.get())
                    ? Optional.of(between(size, lower.get(), upper.get(), Scale.BETWEEN_LIMITS))
                    : Optional.empty();
        }
        return bounds == Bounds.FROM_ZERO && upper.get().signum() > 0
                ? Optional.of(between(size, upper.get().negated(), upper.get(), Scale.OF_ONE_LIMIT))
                : Optional.empty();
    }

    /** From zero it is as between the limit below zero and above it. */
    private static TolerancePlace between(Length size, Length lower, Length upper, Scale scale) {
        return new TolerancePlace(
                ToleranceUsed.of(size.base(), lower.base(), upper.base()).movePointRight(AS_PERCENT), scale);
    }
}
