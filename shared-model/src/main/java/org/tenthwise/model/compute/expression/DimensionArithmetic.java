package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.compute.expression.Dimension.Standing;

/** In kinds: lengths go with lengths, angles with angles, and a typed figure is whatever stands beside it. */
final class DimensionArithmetic implements Arithmetic<Dimension> {

    @Override
    public Dimension figure(BigDecimal value) {
        return Dimension.ANY;
    }

    @Override
    public Dimension pi() {
        return Dimension.NUMBER;
    }

    @Override
    public Dimension negated(Dimension of) {
        return of;
    }

    @Override
    public Dimension plus(Dimension left, Dimension right) {
        if (!left.canBe(right)) {
            throw new Undefined("model.expression.mixed", left.said(), right.said());
        }
        return left.standing().compareTo(right.standing()) <= 0 ? left : right;
    }

    @Override
    public Dimension minus(Dimension left, Dimension right) {
        return plus(left, right);
    }

    @Override
    public Dimension times(Dimension left, Dimension right) {
        if (left.isAny() && right.isAny()) {
            return Dimension.ANY;
        }
        if (left.isAny() || right.isAny()) {
            Dimension named = left.isAny() ? right : left;
            return named.isNumber() ? Dimension.ANY : named;
        }
        return made(left.lengths() + right.lengths(), left, right);
    }

    @Override
    public Dimension over(Dimension left, Dimension right) {
        if (left.isAny() && right.isAny() || left.isAny() && right.isNumber()) {
            return Dimension.ANY;
        }
        if (right.isAny()) {
            return left.isNumber() ? left : new Dimension(left.lengths(), left.angle(), Standing.LOOSE);
        }
        if (left.isAny()) {
            return new Dimension(-right.lengths(), false, Standing.LOOSE);
        }
        return left.angle() && right.angle() ? Dimension.NUMBER : made(left.lengths() - right.lengths(), left, right);
    }

    /** An angle stays one beside plain numbers; beside a length it counts as its degrees, as in an arc. */
    private static Dimension made(int lengths, Dimension left, Dimension right) {
        boolean angle = lengths == 0 && left.angle() != right.angle() && left.lengths() == 0 && right.lengths() == 0;
        boolean firm = left.standing() == Standing.FIRM && right.standing() == Standing.FIRM;
        return new Dimension(lengths, angle, firm ? Standing.FIRM : Standing.LOOSE);
    }

    @Override
    public Dimension power(Dimension of, int exponent) {
        return of.isAny() ? of : new Dimension(of.lengths() * exponent, false, of.standing());
    }

    @Override
    public Dimension of(Function function, Dimension value) {
        return switch (function) {
            case SQRT -> root(value);
            case SIN, COS, TAN -> of(value, Dimension.ANGLE, Dimension.NUMBER);
            case ASIN, ACOS, ATAN -> of(value, Dimension.NUMBER, Dimension.ANGLE);
            default -> value;
        };
    }

    private static Dimension of(Dimension value, Dimension wanted, Dimension made) {
        if (!value.canBe(wanted)) {
            throw new Undefined("model.expression.not-of", wanted.said(), value.said());
        }
        return made;
    }

    private static Dimension root(Dimension value) {
        if (value.isAny()) {
            return value;
        }
        if (value.lengths() % 2 != 0 || value.angle()) {
            throw new Undefined("model.expression.no-root", value.said());
        }
        return new Dimension(value.lengths() / 2, false, value.standing());
    }

    @Override
    public Dimension of(Function function, List<Dimension> values) {
        return values.stream().reduce(this::plus).orElseThrow();
    }
}
