package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.tenthwise.model.words.Refused;

/**
 * An expanded uncertainty as it is written down: with the figures it deserves.
 *
 * <p>Expanded to two figures, rounded up; coverage factor to two places, half-even.
 *
 * <p>In the unit of the components; more than zero.
 *
 * <p>An uncertainty of zero cannot be stated.
 *
 * <p>Source: JCGM 100:2008 (GUM), 7.2.6: two figures are as much as an uncertainty is known to, and it may be better to
 * round up than to the nearest.
 */
public record Stated(BigDecimal expanded, BigDecimal coverageFactor) {

    private static final MathContext TWO_FIGURES_UP = new MathContext(2, RoundingMode.UP);
    /** Figures a sum in binary fractions is sure of; more of them would round up what is whole. */
    private static final MathContext SURE = new MathContext(12, RoundingMode.HALF_EVEN);

    private static final int PLACES_OF_A_FACTOR = 2;

    /** @throws IllegalArgumentException if there is nothing to state */
    public static Stated of(Budget budget) {
        BigDecimal expanded = new BigDecimal(budget.expanded()).round(SURE).round(TWO_FIGURES_UP);
        if (expanded.signum() <= 0) {
            throw new Refused("model.stated.uncertainty-zero");
        }
        return new Stated(
                expanded,
                BigDecimal.valueOf(budget.coverage().factor()).setScale(PLACES_OF_A_FACTOR, RoundingMode.HALF_EVEN));
    }
}
