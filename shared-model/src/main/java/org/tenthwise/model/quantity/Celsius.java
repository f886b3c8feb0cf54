package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import org.tenthwise.model.words.Refused;

/**
 * A temperature in degrees Celsius, with the zeros it was written with.
 *
 * @param degrees above absolute zero, at most 1000: hotter is no workpiece to measure or to shrink on
 */
public record Celsius(BigDecimal degrees) {

    private static final BigDecimal ABSOLUTE_ZERO = new BigDecimal("-273.15");
    private static final BigDecimal MOST = new BigDecimal("1000");

    /** The reference temperature for sizes, ISO 1. */
    public static final Celsius REFERENCE = new Celsius(new BigDecimal("20"));

    public Celsius {
        if (degrees.compareTo(ABSOLUTE_ZERO) <= 0 || degrees.compareTo(MOST) > 0) {
            throw new Refused("model.celsius.c-temperature", degrees.toPlainString());
        }
    }

    /** @throws NumberFormatException if {@code degrees} is not a decimal number */
    public static Celsius of(String degrees) {
        return new Celsius(new BigDecimal(degrees));
    }

    /** Degrees above the reference temperature; less than zero below it. */
    public BigDecimal aboveReference() {
        return degrees.subtract(REFERENCE.degrees);
    }

    public boolean isAbove(Celsius other) {
        return degrees.compareTo(other.degrees) > 0;
    }

    /** The figure alone. */
    public String text() {
        return degrees.toPlainString();
    }

    @Override
    public String toString() {
        return text() + " °C";
    }
}
