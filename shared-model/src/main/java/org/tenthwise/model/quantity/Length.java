package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import org.tenthwise.model.words.Refused;

/**
 * A length, an angle or a figure of a scale, held exactly, in millimetres, in seconds of arc or in the unit of the
 * scale. Two of different kinds are never added or compared.
 *
 * <p>25.40 mm, 25.4 mm and 1 in are the same value and are {@code equals}, and so are 29.5° and 29°30′. How many places
 * were written is a fact about the {@link Written} figure and is kept there. There is no way in from a {@code double}:
 * sums that need roots or angles go through {@link Nanometres}.
 *
 * @param base in millimetres, seconds of arc or the unit of a scale, any sign; trailing zeros are dropped
 */
public record Length(BigDecimal base, QuantityKind kind) implements Comparable<Length> {

    public static final Length ZERO = new Length(BigDecimal.ZERO);

    /** Places of a millimetre (1 pm) or an inch kept where a division does not come out. */
    private static final int PLACES_OF_A_QUOTIENT = 12;

    private static final BigDecimal SECONDS_OF_A_TURN = BigDecimal.valueOf(1_296_000);

    public Length {
        base = base.signum() == 0 ? BigDecimal.ZERO : base.stripTrailingZeros();
    }

    /** A length in millimetres. */
    public Length(BigDecimal millimetres) {
        this(millimetres, QuantityKind.LENGTH);
    }

    public static Length of(BigDecimal figure, Unit unit) {
        return new Length(figure.multiply(unit.size()), unit.kind());
    }

    /** @throws NumberFormatException if {@code figure} is not a plain decimal number */
    public static Length of(String figure, Unit unit) {
        return of(new BigDecimal(figure), unit);
    }

    /** @throws IllegalArgumentException if they are of two kinds */
    public Length plus(Length other) {
        return with(base.add(other.sameKind(kind).base));
    }

    /** @throws IllegalArgumentException if they are of two kinds */
    public Length minus(Length other) {
        return with(base.subtract(other.sameKind(kind).base));
    }

    public Length negated() {
        return with(base.negate());
    }

    public Length abs() {
        return with(base.abs());
    }

    public Length times(BigDecimal factor) {
        return with(base.multiply(factor));
    }

    /** Half of this, exactly. */
    public Length half() {
        return times(new BigDecimal("0.5"));
    }

    /** This divided by {@code divisor}, to 1e-12 of the unit it is held in, half-even. */
    public Length dividedBy(BigDecimal divisor) {
        return with(base.divide(divisor, PLACES_OF_A_QUOTIENT, RoundingMode.HALF_EVEN));
    }

    /** Of an angle from one direction to another: how far it is the short way round, half a turn at the most. */
    public Length shortWayRound() {
        BigDecimal within = sameKind(QuantityKind.ANGLE).base.abs().remainder(SECONDS_OF_A_TURN);
        return with(within.min(SECONDS_OF_A_TURN.subtract(within)));
    }

    public int signum() {
        return base.signum();
    }

    /** Zero of the same kind. */
    public Length zero() {
        return with(BigDecimal.ZERO);
    }

    /** @throws IllegalArgumentException for an angle or a scale */
    public BigDecimal millimetres() {
        return sameKind(QuantityKind.LENGTH).base;
    }

    private Length with(BigDecimal other) {
        return new Length(other, kind);
    }

    /**
     * This, as one that is of the kind wanted.
     *
     * @throws IllegalArgumentException if it is of another
     */
    public Length sameKind(QuantityKind wanted) {
        if (!kind.equals(wanted)) {
            throw new IllegalArgumentException("%s is no %s".formatted(this, wanted));
        }
        return this;
    }

    public boolean isAbove(Length other) {
        return compareTo(other) > 0;
    }

    public boolean isBelow(Length other) {
        return compareTo(other) < 0;
    }

    /**
     * The figure in {@code unit}. Exact in millimetres, seconds of arc and the unit of a scale, and in any other unit
     * for whatever was written in it; where it has no end there, it comes out to 1e-12, half-even. Trailing zeros are
     * dropped.
     *
     * @throws IllegalArgumentException in a unit of another kind
     */
    public BigDecimal in(Unit unit) {
        sameKind(unit.kind());
        if (unit.size().equals(BigDecimal.ONE)) {
            return base;
        }
        BigDecimal figure =
                base.divide(unit.size(), Math.max(PLACES_OF_A_QUOTIENT, base.scale()), RoundingMode.HALF_EVEN);
        if (figure.multiply(unit.size()).compareTo(base) != 0) {
            figure = figure.setScale(PLACES_OF_A_QUOTIENT, RoundingMode.HALF_EVEN);
        }
        return figure.signum() == 0 ? BigDecimal.ZERO : figure.stripTrailingZeros();
    }

    /** @throws IllegalArgumentException if there is nothing to average */
    public static Length mean(Collection<Length> lengths) {
        if (lengths.isEmpty()) {
            throw new Refused("model.length.mean-lengths");
        }
        return lengths.stream().reduce(Length::plus).orElseThrow().dividedBy(BigDecimal.valueOf(lengths.size()));
    }

    /**
     * √(a² + b²), to 1e-12 of the unit it is held in, half-even.
     *
     * @throws IllegalArgumentException if they are of two kinds
     */
    public static Length rootOfSquares(Length a, Length b) {
        BigDecimal other = b.sameKind(a.kind).base;
        BigDecimal squares = a.base.multiply(a.base).add(other.multiply(other));
        return a.with(squares.sqrt(MathContext.DECIMAL64).setScale(PLACES_OF_A_QUOTIENT, RoundingMode.HALF_EVEN));
    }

    /** @throws java.util.NoSuchElementException if {@code lengths} is empty */
    public static Length greatest(Collection<Length> lengths) {
        return lengths.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    /** @throws java.util.NoSuchElementException if {@code lengths} is empty */
    public static Length least(Collection<Length> lengths) {
        return lengths.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** @throws IllegalArgumentException if they are of two kinds */
    @Override
    public int compareTo(Length other) {
        return base.compareTo(other.sameKind(kind).base);
    }

    @Override
    public String toString() {
        return base.toPlainString() + (kind.isScale() ? " " + kind : kind.equals(QuantityKind.LENGTH) ? " mm" : "″");
    }
}
