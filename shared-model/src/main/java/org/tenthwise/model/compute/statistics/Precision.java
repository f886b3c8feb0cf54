package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How many figures exact sums keep where a quotient or a root does not come out. */
final class Precision {

    /** Twenty: more than any certified result states. */
    static final MathContext RESULT = new MathContext(20, RoundingMode.HALF_EVEN);

    /** Enough that what is worked out from a rounded quotient is still right to the figures of a result. */
    static final MathContext WORKING = new MathContext(50, RoundingMode.HALF_EVEN);

    /** Places after which most quotients of sizes and tolerances have come out. */
    private static final int SHORT = 6;

    private Precision() {}

    /** {@code numerator / denominator} to the figures of a result; one that comes out soon is found in short sums. */
    static BigDecimal quotient(BigDecimal numerator, BigDecimal denominator) {
        int wanted = numerator.scale() - denominator.scale();
        if (wanted <= SHORT) {
            BigDecimal soon = numerator.divide(denominator, SHORT, RoundingMode.DOWN);
            if (soon.precision() <= RESULT.getPrecision()
                    && soon.multiply(denominator).compareTo(numerator) == 0) {
                BigDecimal plain = soon.signum() == 0 ? BigDecimal.ZERO.setScale(wanted) : soon.stripTrailingZeros();
                return plain.scale() < wanted ? plain.setScale(wanted) : plain;
            }
        }
        return numerator.divide(denominator, WORKING).round(RESULT);
    }

    /**
     * The square root of {@code numerator / denominator} to the figures of a result; a little less than zero counts as
     * zero.
     */
    static BigDecimal root(BigDecimal numerator, BigDecimal denominator) {
        return numerator.signum() <= 0
                ? BigDecimal.ZERO
                : numerator.divide(denominator, WORKING).sqrt(WORKING).round(RESULT);
    }
}
