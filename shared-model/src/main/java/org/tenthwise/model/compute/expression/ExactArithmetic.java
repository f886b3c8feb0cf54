package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;

/**
 * In decimals: exact as long as only + − × are used and divisions come out. A division that has no end and a root go to
 * 34 figures, sines, tangents and their angles to 15.
 */
final class ExactArithmetic implements Arithmetic<BigDecimal> {

    /** Beyond what any product of shop figures has, short enough for a chain of products to stay cheap. */
    private static final MathContext EXACT = new MathContext(120, RoundingMode.HALF_EVEN);

    private static final MathContext ENDLESS = MathContext.DECIMAL128;
    private static final MathContext OF_ANGLES = new MathContext(15, RoundingMode.HALF_EVEN);
    private static final int MOST_MAGNITUDE = 40;
    /** So far past the edge of what has a root or an angle a figure may be by the rounding of the steps before. */
    private static final BigDecimal ROUNDING = new BigDecimal("1e-12");

    private static final BigDecimal FLAT = BigDecimal.valueOf(180);
    private static final BigDecimal RIGHT = BigDecimal.valueOf(90);

    @Override
    public BigDecimal figure(BigDecimal value) {
        return value;
    }

    @Override
    public BigDecimal pi() {
        return ofAngles(Math.PI);
    }

    @Override
    public BigDecimal negated(BigDecimal of) {
        return of.negate();
    }

    @Override
    public BigDecimal plus(BigDecimal left, BigDecimal right) {
        return inRange(left.add(right, EXACT));
    }

    @Override
    public BigDecimal minus(BigDecimal left, BigDecimal right) {
        return inRange(left.subtract(right, EXACT));
    }

    @Override
    public BigDecimal times(BigDecimal left, BigDecimal right) {
        return inRange(left.multiply(right, EXACT));
    }

    @Override
    public BigDecimal over(BigDecimal left, BigDecimal right) {
        if (right.signum() == 0) {
            throw new Undefined("model.expression.division-by-zero");
        }
        return inRange(divided(left, right));
    }

    static BigDecimal divided(BigDecimal left, BigDecimal right) {
        BigDecimal quotient = left.divide(right, ENDLESS);
        return quotient.multiply(right).compareTo(left) == 0 ? quotient.stripTrailingZeros() : quotient;
    }

    @Override
    public BigDecimal power(BigDecimal of, int exponent) {
        return inRange(of.pow(exponent, EXACT));
    }

    @Override
    public BigDecimal of(Function function, BigDecimal value) {
        double figure = value.doubleValue();
        return switch (function) {
            case ABS -> value.abs();
            case SQRT -> root(value);
            case SIN -> ofAngles(Math.sin(Math.toRadians(figure)));
            case COS -> ofAngles(Math.cos(Math.toRadians(figure)));
            case TAN -> tangent(value);
            case ASIN -> ofAngles(Math.toDegrees(Math.asin(ratio(value))));
            case ACOS -> ofAngles(Math.toDegrees(Math.acos(ratio(value))));
            case ATAN -> ofAngles(Math.toDegrees(Math.atan(figure)));
            case MIN, MAX, MEAN -> value;
        };
    }

    @Override
    public BigDecimal of(Function function, List<BigDecimal> values) {
        return switch (function) {
            case MIN -> values.stream().min(Comparator.naturalOrder()).orElseThrow();
            case MAX -> values.stream().max(Comparator.naturalOrder()).orElseThrow();
            default -> mean(values);
        };
    }

    static BigDecimal mean(List<BigDecimal> values) {
        return divided(values.stream().reduce(BigDecimal.ZERO, BigDecimal::add), BigDecimal.valueOf(values.size()));
    }

    private static BigDecimal root(BigDecimal value) {
        if (value.compareTo(ROUNDING.negate()) < 0) {
            throw new Undefined("model.expression.root-of-negative");
        }
        return value.max(BigDecimal.ZERO).sqrt(ENDLESS);
    }

    private static BigDecimal tangent(BigDecimal degrees) {
        if (degrees.subtract(RIGHT).remainder(FLAT).signum() == 0) {
            throw new Undefined("model.expression.no-tangent");
        }
        return ofAngles(Math.tan(Math.toRadians(degrees.doubleValue())));
    }

    private static double ratio(BigDecimal value) {
        if (value.abs().subtract(BigDecimal.ONE).compareTo(ROUNDING) > 0) {
            throw new Undefined("model.expression.no-arc");
        }
        return Math.max(-1, Math.min(1, value.doubleValue()));
    }

    private static BigDecimal ofAngles(double figure) {
        return new BigDecimal(figure, OF_ANGLES)
                .setScale(OF_ANGLES.getPrecision(), RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
    }

    private static BigDecimal inRange(BigDecimal figure) {
        if (figure.signum() != 0 && (long) figure.precision() - figure.scale() > MOST_MAGNITUDE) {
            throw new Undefined("model.expression.out-of-range");
        }
        return figure;
    }
}
