package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;

/**
 * Where a figure of a scale is looked for: a coarse gate for a missing point and for a figure of another scale, as 63
 * µin where 1.6 µm is meant, or 400 HBW for 42 HRC.
 *
 * <p>Between two limits a quarter of their middle or their width away from it, whichever is more; with an upper one
 * alone from nought to five times it, a roughness from a twentieth of it; with a lower one alone from half of it to
 * twice it. Common practice.
 */
final class OnAScale {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");
    private static final BigDecimal TWENTIETH = new BigDecimal("0.05");
    private static final BigDecimal TWICE = new BigDecimal("2");
    private static final BigDecimal A_FEW = new BigDecimal("5");

    private OnAScale() {}

    /**
     * Absent where a limit alone says nothing: nought, or less.
     *
     * @param rough whether it is a roughness, which is never nought
     */
    static Optional<Expected> expected(Limits limits, boolean rough) {
        Length middle = limits.middle();
        if (limits.width().isPresent()) {
            Length quarter = middle.abs().times(QUARTER);
            return Optional.of(new Expected(
                    middle, Length.greatest(List.of(quarter, limits.width().get()))));
        }
        if (middle.signum() <= 0) {
            return Optional.empty();
        }
        if (limits.upper().isEmpty()) {
            return Optional.of(between(middle.half(), middle.times(TWICE)));
        }
        return Optional.of(between(rough ? middle.times(TWENTIETH) : middle.zero(), middle.times(A_FEW)));
    }

    private static Expected between(Length least, Length most) {
        return new Expected(least.plus(most).half(), most.minus(least).half());
    }
}
