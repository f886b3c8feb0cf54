package org.tenthwise.model.compute.position;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;

/**
 * How far an axis lies from its true place, as the diameter of the circle round the true place that it lies on.
 *
 * <p>2 √(x² + y²): the zone of a position tolerance is stated as a diameter, so the distance counts twice.
 *
 * <p>A length without sign. It does not depend on how the frame of the two axes is turned. An axis that leans is read
 * at both ends of its depth, and the larger of the two counts: what lies between lies nearer.
 *
 * <p>Both zero give zero.
 *
 * <p>Source: ASME Y14.5-2018 and ISO 1101:2017, position tolerance with a cylindrical zone, from memory; the sum of
 * squares as worked in Goodheart-Willcox, GD&amp;T: Application and Interpretation (2021), p. 312.
 *
 * @param x measured less true, along one axis of the drawing's frame
 * @param y the same along the axis square to it
 */
public record PositionDeviation(Length x, Length y) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal FOUR = BigDecimal.valueOf(4);

    /** To 1e-12 mm, for reading; whether it is inside a zone {@link #isWithin} says exactly. */
    public Length diameter() {
        return Length.rootOfSquares(x, y).times(TWO);
    }

    /** Whether it is no more than {@code allowed}, a diameter; without any root, so exactly. */
    public boolean isWithin(Length allowed) {
        return allowed.signum() >= 0 && squares().multiply(FOUR).compareTo(square(allowed)) <= 0;
    }

    /** Whether it is further out than {@code other}; exactly. */
    public boolean isBeyond(PositionDeviation other) {
        return squares().compareTo(other.squares()) > 0;
    }

    private BigDecimal squares() {
        return square(x).add(square(y));
    }

    private static BigDecimal square(Length length) {
        return length.millimetres().multiply(length.millimetres());
    }
}
