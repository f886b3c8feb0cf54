package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.compute.position.BoltCircle;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/**
 * Where holes are to be: {@code x} and {@code y}, or {@code radius} and {@code angle}, of one; a table of each in
 * {@code holes}; or a {@code bolt_circle}.
 */
final class TruePlaceRules {

    private static final String X = "x";
    private static final String Y = "y";
    private static final String RADIUS = "radius";
    private static final String ANGLE = "angle";
    private static final String HOLES = "holes";
    private static final String BOLT_CIRCLE = "bolt_circle";
    private static final int MOST = 100;

    /** Ten nanometres. */
    private static final int PLACES_OF_A_MILLIMETRE = 5;

    private static final int PLACES_OF_AN_INCH = 6;

    private final Unit unit;

    TruePlaceRules(Unit unit) {
        this.unit = unit;
    }

    /** Empty where a problem was noted. */
    List<TruePlace> read(TableKeys keys) {
        if (keys.has(HOLES) && keys.has(BOLT_CIRCLE)) {
            keys.problem(BOLT_CIRCLE, "plan.position.beside", BOLT_CIRCLE, HOLES);
        }
        for (String one : List.of(X, Y, RADIUS, ANGLE)) {
            if (keys.has(one) && (keys.has(HOLES) || keys.has(BOLT_CIRCLE))) {
                keys.problem(one, "plan.position.beside", one, keys.has(HOLES) ? HOLES : BOLT_CIRCLE);
                keys.any(one);
            }
        }
        if (keys.has(HOLES)) {
            return several(keys);
        }
        if (keys.has(BOLT_CIRCLE)) {
            return keys.table(BOLT_CIRCLE)
                    .map(table -> onACircle(keys.inside(BOLT_CIRCLE, table)))
                    .orElse(List.of());
        }
        return place(keys, Optional.empty()).stream().toList();
    }

    private List<TruePlace> several(TableKeys keys) {
        List<TruePlace> holes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (RawTable table : keys.tables(HOLES)) {
            TableKeys hole = keys.inside(Message.of("plan.in.hole"), table);
            Optional<String> name = hole.text("name");
            name.filter(said -> !names.add(said.toLowerCase(Locale.ROOT)))
                    .ifPresent(said -> hole.problem("name", "plan.place.twice", said));
            Optional<TruePlace> place = place(hole, name);
            hole.finish();
            place.ifPresent(holes::add);
        }
        return holes;
    }

    private Optional<TruePlace> place(TableKeys keys, Optional<String> name) {
        boolean polar = keys.has(RADIUS) || keys.has(ANGLE);
        if (!polar) {
            Optional<Written> x = keys.figure(X, unit);
            Optional<Written> y = keys.figure(Y, unit);
            return x.flatMap(across -> y.map(up -> new TruePlace(name, across, up)));
        }
        for (String other : List.of(X, Y)) {
            keys.ifAny(other, key -> {
                keys.problem(key, "plan.position.beside", key, RADIUS);
                return Optional.empty();
            });
        }
        Optional<Written> radius = keys.size(RADIUS, unit);
        Optional<BigDecimal> angle = keys.number(ANGLE);
        angle.filter(degrees -> !PlaceRules.isOnTheCircle(degrees))
                .ifPresent(degrees -> keys.problem(ANGLE, "plan.angle", degrees));
        return radius.flatMap(out -> angle.map(degrees -> {
            BoltCircle circle = new BoltCircle(out.length().plus(out.length()), 2, degrees, Length.ZERO, Length.ZERO);
            return at(name, circle, 0);
        }));
    }

    private List<TruePlace> onACircle(TableKeys keys) {
        Optional<Written> diameter = keys.size("diameter", unit);
        Optional<Integer> holes = keys.whole(HOLES);
        BigDecimal start = keys.ifAny("start", keys::number).orElse(BigDecimal.ZERO);
        Length centreX = keys.ifAny(X, key -> keys.figure(key, unit))
                .map(Written::length)
                .orElse(Length.ZERO);
        Length centreY = keys.ifAny(Y, key -> keys.figure(key, unit))
                .map(Written::length)
                .orElse(Length.ZERO);
        keys.finish();
        boolean sound = holes.filter(count -> count >= 2 && count <= MOST).isPresent();
        holes.filter(count -> !sound).ifPresent(count -> keys.problem(HOLES, "plan.position.circle", count, MOST));
        return diameter.filter(any -> sound)
                .map(across -> new BoltCircle(across.length(), holes.orElseThrow(), start, centreX, centreY))
                .map(circle -> IntStream.range(0, circle.holes())
                        .mapToObj(hole -> at(Optional.of(String.valueOf(hole + 1)), circle, hole))
                        .toList())
                .orElse(List.of());
    }

    private TruePlace at(Optional<String> name, BoltCircle circle, int hole) {
        return new TruePlace(
                name, written(circle.x().get(hole)), written(circle.y().get(hole)));
    }

    private Written written(Length length) {
        int places = unit == Unit.INCH ? PLACES_OF_AN_INCH : PLACES_OF_A_MILLIMETRE;
        return Written.of(length.in(unit).setScale(places, RoundingMode.HALF_EVEN), unit);
    }
}
