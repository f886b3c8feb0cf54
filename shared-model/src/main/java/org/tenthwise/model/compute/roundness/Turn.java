package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;

/** Degrees of one full turn, counted from nought, inclusive, to 360, exclusive. */
public final class Turn {

    public static final BigDecimal FULL = BigDecimal.valueOf(360);

    static final BigDecimal HALF = BigDecimal.valueOf(180);

    private Turn() {
    }

    /** The same direction inside one turn; trailing noughts are dropped, so equal directions are equal objects. */
    public static BigDecimal within(BigDecimal degrees) {
        BigDecimal rest = degrees.remainder(FULL);
        BigDecimal positive = rest.signum() < 0 ? rest.add(FULL) : rest;
        return positive.signum() == 0 ? BigDecimal.ZERO : positive.stripTrailingZeros();
    }

    static double radians(BigDecimal degrees) {
        return Math.toRadians(within(degrees).doubleValue());
    }
}
