package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Half-even rounding to the places a standard prints.
 *
 * <p>A first rounding to 1e-9 takes away what a division such as 1/12 or a root left in the last places, so that a
 * figure that lies half-way between two printed ones is seen to do so: 0.23125 is 0.2312, 0.21875 is 0.2188. Half-even
 * is the rule of ASME B1.30 (from memory) and fits the printed tables.
 */
final class Rounded {

    static final int PLACES_OF_AN_INCH = 4;
    static final int PLACES_OF_A_MILLIMETRE = 3;

    private static final int PLACES_TRUSTED = 9;

    private Rounded() {}

    static BigDecimal to(int places, BigDecimal figure) {
        return figure.setScale(PLACES_TRUSTED, RoundingMode.HALF_EVEN).setScale(places, RoundingMode.HALF_EVEN);
    }

    static BigDecimal to(int places, double figure) {
        return to(places, BigDecimal.valueOf(figure));
    }

    /** To 0.0001 in. */
    static BigDecimal inch(BigDecimal figure) {
        return to(PLACES_OF_AN_INCH, figure);
    }

    /** To 0.001 mm. */
    static BigDecimal millimetre(BigDecimal figure) {
        return to(PLACES_OF_A_MILLIMETRE, figure);
    }
}
