package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;

/** Degrees of one full turn, counted from zero, inclusive, to 360, exclusive. */
public final class Angle {

    public static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

    static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);

    private Angle() {}

    /** The same direction inside one turn; trailing zeros are dropped, so equal directions are equal objects. */
    public static BigDecimal inOneTurn(BigDecimal degrees) {
        BigDecimal rest = degrees.remainder(FULL_TURN);
        BigDecimal positive = rest.signum() < 0 ? rest.add(FULL_TURN) : rest;
        return positive.signum() == 0 ? BigDecimal.ZERO : positive.stripTrailingZeros();
    }

    static double radians(BigDecimal degrees) {
        return Math.toRadians(inOneTurn(degrees).doubleValue());
    }
}
