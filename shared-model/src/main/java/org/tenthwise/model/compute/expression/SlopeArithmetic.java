package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.List;

/**
 * In ranges with their slopes. Rounding is left out: it is a millionth of what the search for the least and the
 * greatest is content with.
 */
final class SlopeArithmetic implements Arithmetic<Slope> {

    private final int names;

    /** @param names how many there are */
    SlopeArithmetic(int names) {
        this.names = names;
    }

    @Override
    public Slope figure(BigDecimal value) {
        return Slope.level(Span.of(value.doubleValue()), names);
    }

    @Override
    public Slope pi() {
        return Slope.level(Span.of(Math.PI), names);
    }

    @Override
    public Slope negated(Slope of) {
        return of.times(-1);
    }

    @Override
    public Slope plus(Slope left, Slope right) {
        return left.plus(right);
    }

    @Override
    public Slope minus(Slope left, Slope right) {
        return left.plus(negated(right));
    }

    @Override
    public Slope times(Slope left, Slope right) {
        return left.times(right);
    }

    @Override
    public Slope over(Slope left, Slope right) {
        Span inverse = right.value().inverse();
        return left.times(right.to(inverse, inverse.power(2).negated()));
    }

    @Override
    public Slope power(Slope of, int exponent) {
        Span below = exponent == 2 ? of.value() : of.value().power(exponent - 1);
        return of.to(of.value().power(exponent), below.times(exponent));
    }

    @Override
    public Slope of(Function function, Slope of) {
        Span value = of.value();
        double perDegree = Math.toRadians(1);
        return switch (function) {
            case SQRT -> {
                Span root = value.root();
                yield of.to(root, root.high() == 0 ? Span.UNKNOWN : new Span(0.5 / root.high(), 0.5 / root.low()));
            }
            case SIN -> of.to(value.sine(), value.cosine().times(perDegree));
            case COS -> of.to(value.cosine(), value.sine().times(-perDegree));
            case TAN -> {
                Span tangent = value.tangent();
                yield of.to(tangent, tangent.power(2).plus(Span.of(1)).times(perDegree));
            }
            case ASIN -> of.to(value.arc(Math::asin), steepnessOfArc(value));
            case ACOS ->
                of.to(
                        value.arc(Math::asin).negated().plus(Span.of(Math.toDegrees(Math.PI / 2))),
                        steepnessOfArc(value).negated());
            case ATAN ->
                of.to(
                        value.arcTangent(),
                        value.power(2).plus(Span.of(1)).inverse().times(1 / perDegree));
            case ABS -> of.to(value.absolute(), signs(value));
            case MIN, MAX, MEAN -> of;
        };
    }

    private static Span steepnessOfArc(Span ratio) {
        Span squares = ratio.power(2);
        return new Span(
                Math.toDegrees(1 / Math.sqrt(Math.max(0, 1 - squares.low()))),
                Math.toDegrees(1 / Math.sqrt(Math.max(0, 1 - squares.high()))));
    }

    private static Span signs(Span value) {
        return new Span(value.low() < 0 || value.high() <= 0 ? -1 : 1, value.high() > 0 || value.low() >= 0 ? 1 : -1);
    }

    @Override
    public Slope of(Function function, List<Slope> values) {
        return switch (function) {
            case MIN -> values.stream().reduce(Slope::least).orElseThrow();
            case MAX ->
                negated(values.stream().map(this::negated).reduce(Slope::least).orElseThrow());
            default -> values.stream().reduce(Slope::plus).orElseThrow().times(1.0 / values.size());
        };
    }
}
