package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.worked.BallsInTaper;
import org.tenthwise.model.worked.BetweenCentres;
import org.tenthwise.model.worked.ChordAndHeight;
import org.tenthwise.model.worked.KeywayDepth;
import org.tenthwise.model.worked.KnownSize;
import org.tenthwise.model.worked.OnSineBar;
import org.tenthwise.model.worked.OverTeethSpan;
import org.tenthwise.model.worked.PinInVee;
import org.tenthwise.model.worked.PinsInDovetail;
import org.tenthwise.model.worked.PinsInTeeth;
import org.tenthwise.model.worked.RollersOnTaper;
import org.tenthwise.model.worked.RollsAtArc;
import org.tenthwise.model.worked.TwoDiameters;
import org.tenthwise.model.worked.WorkedBy;
import org.tenthwise.model.worked.WorkedWay;

/** What each way of working a size out is given. */
final class WorkedByRules {

    private static final String SMALL_DOWN = "small-down";
    private static final String LARGE_DOWN = "large-down";
    private static final String CONVEX = "convex";
    private static final String CONCAVE = "concave";
    private static final String MODULE = "module";
    private static final String DIAMETRAL_PITCH = "diametral_pitch";

    /** All that one of the ways is given or judged by. */
    static final List<String> KEYS = Stream.concat(
                    Stream.of(KnownSize.values()).map(KnownSize::key),
                    Stream.of(
                            "end",
                            "arc",
                            "side",
                            "depth_from",
                            "read",
                            "helix",
                            DIAMETRAL_PITCH,
                            "lower",
                            "upper",
                            "nominal",
                            "plus_minus",
                            "guard_band"))
            .toList();

    private final TableKeys keys;
    private final Unit unit;

    WorkedByRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.unit = unit;
    }

    /** What comes out, so that limits are read of it whatever else is wrong. */
    static QuantityKind gives(WorkedWay way) {
        return switch (way) {
            case TWO_DIAMETERS, SINE_BAR, ROLLERS, BALLS -> QuantityKind.ANGLE;
            case CHORD, ROLLS, DOVETAIL, KEYWAY, VEE, OVER_PINS, SPAN, CENTRES -> QuantityKind.LENGTH;
        };
    }

    /** Absent where a problem was noted. */
    Optional<WorkedBy> read(WorkedWay way) {
        return switch (way) {
            case TWO_DIAMETERS -> one("apart").map(TwoDiameters::new);
            case SINE_BAR -> one("bar").map(OnSineBar::new);
            case ROLLERS -> rollers();
            case BALLS -> balls();
            case CHORD -> one("chord").map(ChordAndHeight::new);
            case ROLLS -> rolls();
            case DOVETAIL -> dovetail();
            case KEYWAY -> keyway();
            case VEE -> vee();
            case OVER_PINS -> overPins();
            case SPAN -> span();
            case CENTRES -> centres();
        };
    }

    private Optional<Written> one(String key) {
        return keys.size(key, unit);
    }

    private Optional<WorkedBy> made(String key, Supplier<WorkedBy> make) {
        return keys.built(() -> true).flatMap(sound -> keys.sensible(key, make));
    }

    private Optional<WorkedBy> rollers() {
        Optional<Written> height = one("height");
        Optional<String> end = keys.word("end", List.of(SMALL_DOWN, LARGE_DOWN), word -> word);
        return made(
                "end",
                () -> new RollersOnTaper(height.orElseThrow(), end.orElseThrow().equals(SMALL_DOWN)));
    }

    private Optional<WorkedBy> balls() {
        Optional<Written> small = one("small_ball");
        Optional<Written> large = one("large_ball");
        small.ifPresent(less -> large.filter(more -> !more.length().isAbove(less.length()))
                .ifPresent(more -> keys.problem("large_ball", "plan.worked.balls", more, less)));
        return made("large_ball", () -> new BallsInTaper(small.orElseThrow(), large.orElseThrow()));
    }

    private Optional<WorkedBy> rolls() {
        Optional<Written> roll = one("roll");
        Optional<String> arc = keys.word("arc", List.of(CONVEX, CONCAVE), word -> word);
        return made(
                "arc",
                () -> new RollsAtArc(roll.orElseThrow(), arc.orElseThrow().equals(CONCAVE)));
    }

    private Optional<WorkedBy> dovetail() {
        Optional<Written> angle = keys.size("angle", AngleLimitRules.MARKED);
        Optional<Written> pin = one("pin");
        Optional<Written> height = one("height");
        Optional<DovetailSide> side = word("side", DovetailSide.values());
        return made(
                "pin",
                () -> new PinsInDovetail(
                        angle.orElseThrow(), pin.orElseThrow(), side.orElseThrow(), height.orElseThrow()));
    }

    private Optional<WorkedBy> keyway() {
        Optional<KeywayDepth.From> from =
                keys.word("depth_from", List.of(KeywayDepth.From.values()), KeywayDepth.From::key);
        Optional<Written> width = one("width");
        Optional<Written> block = keys.ifAny("block", this::one);
        return made("width", () -> new KeywayDepth(from.orElseThrow(), width.orElseThrow(), block));
    }

    private Optional<WorkedBy> vee() {
        Optional<Written> angle = keys.size("angle", AngleLimitRules.MARKED);
        Optional<Written> pin = one("pin");
        return made("angle", () -> new PinInVee(angle.orElseThrow(), pin.orElseThrow()));
    }

    private Optional<WorkedBy> overPins() {
        Optional<InvoluteTeeth> teeth = teeth();
        Optional<Written> pin = one("pin");
        Optional<ToothSide> side = word("side", ToothSide.values());
        return made("pin", () -> new PinsInTeeth(teeth.orElseThrow(), pin.orElseThrow(), side.orElseThrow()));
    }

    private Optional<WorkedBy> span() {
        Optional<InvoluteTeeth> teeth = teeth();
        Optional<Integer> over = keys.whole("over");
        return made("over", () -> new OverTeethSpan(teeth.orElseThrow(), over.orElseThrow(), unit));
    }

    private Optional<InvoluteTeeth> teeth() {
        Optional<Integer> number = keys.whole("teeth");
        Optional<Length> module = module();
        Optional<BigDecimal> angle = keys.number("pressure_angle");
        BigDecimal helix = keys.ifAny("helix", keys::number).orElse(BigDecimal.ZERO);
        return number.isEmpty() || module.isEmpty() || angle.isEmpty()
                ? Optional.empty()
                : keys.sensible("teeth", () -> new InvoluteTeeth(number.get(), module.get(), angle.get(), helix));
    }

    private Optional<Length> module() {
        if (keys.has(MODULE) && keys.has(DIAMETRAL_PITCH)) {
            keys.problem(DIAMETRAL_PITCH, "plan.worked.pitch");
            keys.any(MODULE);
        }
        Optional<Length> pitch = keys.ifAny(DIAMETRAL_PITCH, key -> keys.number(key)
                .flatMap(number ->
                        number.signum() > 0 ? Optional.of(InvoluteTeeth.moduleOf(number)) : notAboveZero(key, number)));
        return keys.has(DIAMETRAL_PITCH) ? pitch : one(MODULE).map(Written::length);
    }

    private <T> Optional<T> notAboveZero(String key, BigDecimal number) {
        keys.problem(key, "plan.above-zero", key, number);
        return Optional.empty();
    }

    private Optional<WorkedBy> centres() {
        Optional<BetweenCentres.Read> read =
                keys.word("read", List.of(BetweenCentres.Read.values()), BetweenCentres.Read::key);
        Optional<Written> first = one("first");
        Optional<Written> second = one("second");
        return made("read", () -> new BetweenCentres(read.orElseThrow(), first.orElseThrow(), second.orElseThrow()));
    }

    private <E extends Enum<E>> Optional<E> word(String key, E[] words) {
        return keys.word(key, List.of(words), word -> word.name().toLowerCase(Locale.ROOT));
    }
}
