package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.words.Unworkable;

/**
 * The door between exact lengths and the sums that need roots or angles: such a sum works in {@code double} inside its
 * own class and hands out a length rounded to 1 nm, half-even.
 */
public final class Nanometres {

    private static final int PLACES_OF_A_MILLIMETRE = 6;

    private Nanometres() {}

    /**
     * @param millimetres a finite number of millimetres, as a sum with roots or angles left it
     * @throws ArithmeticException if the sum did not come to a finite number
     */
    public static Length round(double millimetres) {
        if (!Double.isFinite(millimetres)) {
            throw new Unworkable("model.nanometres.no-length", millimetres);
        }
        return new Length(BigDecimal.valueOf(millimetres).setScale(PLACES_OF_A_MILLIMETRE, RoundingMode.HALF_EVEN));
    }

    /** To 1 nm, half-even, for what a division left longer. */
    public static Length round(Length length) {
        return new Length(length.millimetres().setScale(PLACES_OF_A_MILLIMETRE, RoundingMode.HALF_EVEN));
    }

    /**
     * The nearest {@code double} to {@code length} in millimetres, for such a sum; never for a comparison with a limit.
     */
    public static double of(Length length) {
        return length.millimetres().doubleValue();
    }
}
