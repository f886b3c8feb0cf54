package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * Whether a display or a scale is fine enough for a tolerance.
 *
 * <p>Share = division / (upper − lower); fine enough where 10 · division ≤ upper − lower.
 *
 * <p>Share without unit, to 16 figures; the tenth of the tolerance is a length. The rule itself is exact.
 *
 * <p>A division of just a tenth is fine enough. Limits without a width between them are refused.
 *
 * <p>Source: <em>common practice</em>, rule of ten for the resolution (GB/T 3177; AIAG, Measurement Systems Analysis).
 * The 10 % rule of the National Physical Laboratory and of MIL-T-46365 takes the same tenth for the uncertainty, which
 * asks more.
 *
 * @param share part of the whole tolerance that one division is
 * @param tenth of the whole tolerance: the coarsest division that will do
 */
public record RuleOfTen(BigDecimal share, Length tenth, boolean fineEnough) {

    /**
     * @throws IllegalArgumentException if the upper limit is not above the lower one, or the division not above zero
     */
    public static RuleOfTen of(Length lower, Length upper, Length division) {
        if (!upper.isAbove(lower)) {
            throw new Refused("model.rule-of-ten.lower-upper", lower, upper);
        }
        if (division.signum() <= 0) {
            throw new Refused("model.rule-of-ten.division-more", division);
        }
        Length tolerance = upper.minus(lower);
        return new RuleOfTen(
                division.millimetres().divide(tolerance.millimetres(), MathContext.DECIMAL64),
                tolerance.times(new BigDecimal("0.1")),
                !division.times(BigDecimal.TEN).isAbove(tolerance));
    }
}
