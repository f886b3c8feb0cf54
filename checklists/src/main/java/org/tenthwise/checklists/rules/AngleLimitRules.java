package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** Limits of an angle: two of them, or a nominal angle with what it may be out by on either side. */
final class AngleLimitRules {

    /** Marks are looked for in whatever is text. */
    static final Unit MARKED = Unit.MINUTE_OF_ARC;

    private static final String NOMINAL = "nominal";
    private static final String PLUS_MINUS = "plus_minus";
    private static final Length HALF_TURN = Length.of("180", Unit.DEGREE);

    private AngleLimitRules() {}

    static Optional<Limits> read(TableKeys keys) {
        Optional<Limits> limits =
                keys.has(NOMINAL) ? aboutNominal(keys) : LimitRules.OF_A_SIZE.readOfASize(keys, MARKED);
        limits.flatMap(Limits::upper)
                .or(() -> limits.flatMap(Limits::lower))
                .filter(most -> most.length().isAbove(HALF_TURN))
                .ifPresent(most -> keys.problem(keys.has(NOMINAL) ? NOMINAL : "upper", "plan.angle.over", most));
        return limits;
    }

    /** The finest unit that limits and guard band are written in. */
    static Unit unit(Limits limits, Written guardBand) {
        return finest(Stream.concat(
                written(limits),
                Stream.of(guardBand).filter(band -> band.figure().signum() > 0)));
    }

    private static Optional<Limits> aboutNominal(TableKeys keys) {
        for (String both : List.of("lower", "upper")) {
            keys.ifAny(both, key -> {
                keys.problem(key, "plan.angle.beside-nominal", key);
                return Optional.empty();
            });
        }
        Optional<Written> nominal = keys.size(NOMINAL, MARKED);
        Optional<Written> out = keys.size(PLUS_MINUS, MARKED);
        if (nominal.isEmpty() || out.isEmpty()) {
            return Optional.empty();
        }
        if (!out.get().length().isBelow(nominal.get().length())) {
            keys.problem(PLUS_MINUS, "plan.angle.nothing-left", out.get(), nominal.get());
            return Optional.empty();
        }
        Unit unit = finest(Stream.of(nominal.get(), out.get()));
        int places =
                Math.max(nominal.get().in(unit).places(), out.get().in(unit).places());
        return Optional.of(Limits.between(
                written(nominal.get().length().minus(out.get().length()), unit, places),
                written(nominal.get().length().plus(out.get().length()), unit, places)));
    }

    /** With the places of what it was made of. */
    private static Written written(Length angle, Unit unit, int places) {
        BigDecimal figure = angle.in(unit);
        return Written.of(figure.setScale(Math.max(places, figure.scale())), unit);
    }

    private static Stream<Written> written(Limits limits) {
        return Stream.of(Limit.values()).flatMap(which -> limits.at(which).stream());
    }

    private static Unit finest(Stream<Written> angles) {
        return angles.map(Written::unit)
                .max(Comparator.comparing(Unit.DEGREE.ofSameKind()::indexOf))
                .orElseThrow();
    }

    /** Both limits in the finest unit that one of them has. */
    static Limits alike(Limits limits) {
        return in(finest(written(limits)), limits);
    }

    /** Both limits alike, however the plan has them. */
    static Limits in(Unit unit, Limits limits) {
        return new Limits(
                limits.lower().map(lower -> lower.in(unit)),
                limits.upper().map(upper -> upper.in(unit)),
                limits.origin());
    }
}
