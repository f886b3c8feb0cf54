package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import org.tenthwise.model.words.Refused;

/**
 * A length, held exactly, in millimetres.
 *
 * <p>25.40 mm, 25.4 mm and 1 in are the same value and are {@code equals}. How many places were written is a fact about
 * the {@link Written} figure and is kept there. There is no way in from a {@code double}: sums that need roots or
 * angles go through {@link Nanometres}.
 *
 * @param millimetres any sign; trailing zeros are dropped
 */
public record Length(BigDecimal millimetres) implements Comparable<Length> {

    public static final Length ZERO = new Length(BigDecimal.ZERO);

    /** Places of a millimetre (1 pm) or an inch kept where a division does not come out. */
    private static final int PLACES_OF_A_QUOTIENT = 12;

    public Length {
        millimetres = millimetres.signum() == 0 ? BigDecimal.ZERO : millimetres.stripTrailingZeros();
    }

    public static Length of(BigDecimal figure, Unit unit) {
        return new Length(figure.multiply(unit.millimetres()));
    }

    /** @throws NumberFormatException if {@code figure} is not a plain decimal number */
    public static Length of(String figure, Unit unit) {
        return of(new BigDecimal(figure), unit);
    }

    public Length plus(Length other) {
        return new Length(millimetres.add(other.millimetres));
    }

    public Length minus(Length other) {
        return new Length(millimetres.subtract(other.millimetres));
    }

    public Length negated() {
        return new Length(millimetres.negate());
    }

    public Length abs() {
        return new Length(millimetres.abs());
    }

    public Length times(BigDecimal factor) {
        return new Length(millimetres.multiply(factor));
    }

    /** Half of this, exactly. */
    public Length half() {
        return times(new BigDecimal("0.5"));
    }

    /** This divided by {@code divisor}, to 1e-12 mm, half-even. */
    public Length dividedBy(BigDecimal divisor) {
        return new Length(millimetres.divide(divisor, PLACES_OF_A_QUOTIENT, RoundingMode.HALF_EVEN));
    }

    public int signum() {
        return millimetres.signum();
    }

    public boolean isAbove(Length other) {
        return compareTo(other) > 0;
    }

    public boolean isBelow(Length other) {
        return compareTo(other) < 0;
    }

    /**
     * The figure in {@code unit}. Exact in millimetres, and in inches for whatever was written in inches; any other
     * length comes out to 1e-12 in, half-even. Trailing zeros are dropped.
     */
    public BigDecimal in(Unit unit) {
        if (unit == Unit.MILLIMETRE) {
            return millimetres;
        }
        BigDecimal figure = millimetres.divide(
                unit.millimetres(), Math.max(PLACES_OF_A_QUOTIENT, millimetres.scale()), RoundingMode.HALF_EVEN);
        if (figure.multiply(unit.millimetres()).compareTo(millimetres) != 0) {
            figure = figure.setScale(PLACES_OF_A_QUOTIENT, RoundingMode.HALF_EVEN);
        }
        return figure.signum() == 0 ? BigDecimal.ZERO : figure.stripTrailingZeros();
    }

    /** @throws IllegalArgumentException if there is nothing to average */
    public static Length mean(Collection<Length> lengths) {
        if (lengths.isEmpty()) {
            throw new Refused("model.length.mean-lengths");
        }
        return lengths.stream().reduce(ZERO, Length::plus).dividedBy(BigDecimal.valueOf(lengths.size()));
    }

    /** @throws java.util.NoSuchElementException if {@code lengths} is empty */
    public static Length greatest(Collection<Length> lengths) {
        return lengths.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    /** @throws java.util.NoSuchElementException if {@code lengths} is empty */
    public static Length least(Collection<Length> lengths) {
        return lengths.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    @Override
    public int compareTo(Length other) {
        return millimetres.compareTo(other.millimetres);
    }

    @Override
    public String toString() {
        return millimetres.toPlainString() + " mm";
    }
}
