package org.tenthwise.model.compute.expression;

import java.util.function.DoubleUnaryOperator;

/**
 * From one figure to another. What it comes to in sums of its own kind holds whatever the sums come to anywhere in it,
 * and may be wider where a name stands in them twice.
 *
 * @param low not above {@code high}; either may be without end
 */
record Span(double low, double high) {

    static final Span ZERO = new Span(0, 0);
    static final Span UNKNOWN = new Span(Double.NaN, Double.NaN);
    private static final double FULL_TURN = 360;
    private static final double HALF_TURN = 180;
    private static final double RIGHT_ANGLE = 90;
    /** As far as the rounding of the steps before may take a figure past an edge. */
    private static final double ROUNDING = 1e-12;

    static Span of(double figure) {
        return new Span(figure, figure);
    }

    private static Span between(double... ends) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double end : ends) {
            low = Math.min(low, end);
            high = Math.max(high, end);
        }
        return new Span(low, high);
    }

    Span negated() {
        return new Span(-high, -low);
    }

    Span plus(Span other) {
        return new Span(low + other.low, high + other.high);
    }

    Span times(Span other) {
        return between(
                product(low, other.low), product(low, other.high), product(high, other.low), product(high, other.high));
    }

    Span times(double factor) {
        return between(product(low, factor), product(high, factor));
    }

    /** Zero of something without end is zero; of something that is not known it is not known. */
    private static double product(double one, double other) {
        boolean isNothing = (one == 0 || other == 0) && !Double.isNaN(one + other);
        return isNothing ? 0 : one * other;
    }

    Span inverse() {
        if (low <= 0 && high >= 0) {
            throw new Undefined("model.expression.division-by-zero");
        }
        return new Span(1 / high, 1 / low);
    }

    Span power(int exponent) {
        Span ends = between(Math.pow(low, exponent), Math.pow(high, exponent));
        return exponent % 2 == 0 && low < 0 && high > 0 ? new Span(0, ends.high) : ends;
    }

    Span root() {
        if (low < -ROUNDING) {
            throw new Undefined("model.expression.root-of-negative");
        }
        return new Span(Math.sqrt(Math.max(0, low)), Math.sqrt(Math.max(0, high)));
    }

    Span absolute() {
        return low <= 0 && high >= 0 ? new Span(0, Math.max(-low, high)) : between(Math.abs(low), Math.abs(high));
    }

    Span sine() {
        Span ends = between(Math.sin(Math.toRadians(low)), Math.sin(Math.toRadians(high)));
        return new Span(has(-RIGHT_ANGLE, FULL_TURN) ? -1 : ends.low, has(RIGHT_ANGLE, FULL_TURN) ? 1 : ends.high);
    }

    Span cosine() {
        return new Span(low + RIGHT_ANGLE, high + RIGHT_ANGLE).sine();
    }

    Span tangent() {
        if (has(RIGHT_ANGLE, HALF_TURN)) {
            throw new Undefined("model.expression.no-tangent");
        }
        return new Span(Math.tan(Math.toRadians(low)), Math.tan(Math.toRadians(high)));
    }

    /** Whether {@code first} or one that lies whole steps from it is in this. */
    private boolean has(double first, double step) {
        return Math.floor((high - first) / step) >= Math.ceil((low - first) / step);
    }

    /** From the lesser to the greater of what {@code rising}, arc sine or less, makes of a ratio. */
    Span arc(DoubleUnaryOperator rising) {
        if (low < -1 - ROUNDING || high > 1 + ROUNDING) {
            throw new Undefined("model.expression.no-arc");
        }
        return new Span(
                Math.toDegrees(rising.applyAsDouble(Math.max(-1, low))),
                Math.toDegrees(rising.applyAsDouble(Math.min(1, high))));
    }

    Span arcTangent() {
        return new Span(Math.toDegrees(Math.atan(low)), Math.toDegrees(Math.atan(high)));
    }

    /** From the lower of both lows to the higher of both highs. */
    Span with(Span other) {
        return new Span(Math.min(low, other.low), Math.max(high, other.high));
    }

    Span least(Span other) {
        return new Span(Math.min(low, other.low), Math.min(high, other.high));
    }
}
