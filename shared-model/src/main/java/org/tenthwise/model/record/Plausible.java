package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/**
 * What a gauge, a unit and a feature can give: a coarse gate for slips of the finger, a missing point, a figure in the
 * other unit, a turn of the dial missed. What lies outside is <em>far off</em>: it can be kept on purpose, and nothing
 * is ever advised from it.
 *
 * <p>A size is far off when it lies more than a quarter of its nominal away, but never while it lies within a tolerance
 * of its limits; a small one may lie half its nominal away. A comparing gauge is far off when it stands more than 1 mm
 * from where the nominal would put it, the reading on its master when it is more than 1 mm from nought and from the
 * certified size, a run-out indicator when it has moved more than a hundred times the limit, a reading of a range when
 * it lies more than a hundred times the limit from the first, a master or a wire when it lies more than a hundredth
 * from its nominal. Common practice.
 */
public final class Plausible {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
    private static final BigDecimal HUNDRED = new BigDecimal("100");
    private static final BigDecimal A_FEW = new BigDecimal("5");
    private static final Length ONE_TURN = Length.of("1", Unit.MILLIMETRE);
    private static final Length LEAST_ROOM_OF_A_MASTER = Length.of("0.02", Unit.MILLIMETRE);
    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("60");
    /** Colder than the shop by more than this is no part and no gauge that lay in it. */
    private static final BigDecimal BELOW_THE_SHOP = BigDecimal.TEN;
    /** A thermometer shows hundredths at the most; a figure with more came from another gauge. */
    private static final int MOST_PLACES_OF_A_TEMPERATURE = 2;

    private Plausible() {}

    /**
     * Where a figure is looked for.
     *
     * @param about what is expected
     * @param room how far from it a figure may lie
     */
    public record Expected(Length about, Length room) {

        public boolean fits(Length figure) {
            return !figure.minus(about).abs().isAbove(room);
        }
    }

    /**
     * Where the next reading of a check is looked for; absent where nothing says so.
     *
     * @param setting what its gauge is set with
     * @param before what was read in the same pass
     */
    public static Optional<Expected> reading(Plan plan, Check check, Optional<Setting> setting, List<Length> before) {
        if (check instanceof Check.PlugFit fit) {
            return plan.step(fit.boreStep()).check() instanceof Check.Size bore
                    ? Optional.of(compared(bore.limits().middle(), setting).orElseGet(() -> near(bore.limits())))
                    : Optional.empty();
        }
        return reading(check, setting, before);
    }

    /** Where a reading that nobody asked for must lie to be taken for the first of a check: within a few tolerances. */
    public static Optional<Expected> opening(Plan plan, Check check, Optional<Setting> setting) {
        return tolerance(plan, check).flatMap(width -> reading(plan, check, setting, List.of())
                .map(expected -> new Expected(expected.about(), width.times(A_FEW))));
    }

    /** Absent where one limit is, and for a range, whose limits say nothing of a reading. */
    private static Optional<Length> tolerance(Plan plan, Check check) {
        if (check instanceof Check.RunOut runOut) {
            return Optional.of(runOut.limit().length());
        }
        if (check instanceof Check.PlugFit fit) {
            return tolerance(plan, plan.step(fit.boreStep()).check());
        }
        return check instanceof Check.OfSize size && size.combine() != Combine.RANGE
                ? size.limits().width()
                : Optional.empty();
    }

    private static Optional<Expected> reading(Check check, Optional<Setting> setting, List<Length> before) {
        if (check instanceof Check.RunOut runOut) {
            return Optional.of(new Expected(Length.ZERO, runOut.limit().length().times(HUNDRED)));
        }
        if (check instanceof Check.Size size) {
            return size.combine() == Combine.RANGE
                    ? range(size, before)
                    : Optional.of(compared(size.limits().middle(), setting).orElseGet(() -> near(size)));
        }
        return check instanceof Check.OverWires wires ? Optional.of(overWires(wires, setting)) : Optional.empty();
    }

    /** Where a comparing gauge stands at the size looked for. */
    private static Optional<Expected> compared(Length wanted, Optional<Setting> setting) {
        return setting.filter(set -> set.zero().isPresent()).map(set -> {
            Length off = wanted.minus(set.certified().orElseThrow().length());
            BigDecimal sign =
                    BigDecimal.valueOf(set.gauge().sense().orElseThrow().sign());
            return new Expected(set.zero().get().length().plus(off.times(sign)), ONE_TURN);
        });
    }

    private static Optional<Expected> range(Check.Size size, List<Length> before) {
        Length most =
                size.limits().upper().or(size.limits()::lower).orElseThrow().length();
        return before.stream().findFirst().map(first -> new Expected(first, most.times(HUNDRED)));
    }

    private static Expected overWires(Check.OverWires wires, Optional<Setting> setting) {
        Length nominal = setting.flatMap(Setting::certified)
                .map(wire -> new MeasurementOverWires(wires.thread(), wire.length())
                        .overWires(wires.pitchDiameter().middle()))
                .orElse(wires.thread().diameter());
        return new Expected(nominal, nominal.times(QUARTER));
    }

    /** A rod on the point of a drilled hole reads deeper than the size by the length of the point. */
    private static Expected near(Check.Size size) {
        Expected near = near(size.limits());
        return size.contact() instanceof Contact.DrilledHole hole
                ? new Expected(near.about().plus(Touch.most(hole)), near.room())
                : near;
    }

    private static Expected near(Limits limits) {
        Length nominal = limits.middle();
        Length quarter = nominal.abs().times(QUARTER);
        Length small = limits.width()
                .map(width -> Length.least(List.of(ONE_TURN, nominal.abs().half())))
                .orElse(ONE_TURN);
        return new Expected(
                nominal, Length.greatest(List.of(quarter, small, limits.width().orElse(Length.ZERO))));
    }

    /** Where the certified size of a master or of wires is looked for. */
    public static Expected certified(Length nominal) {
        return new Expected(nominal, Length.greatest(List.of(nominal.times(HUNDREDTH), LEAST_ROOM_OF_A_MASTER)));
    }

    /**
     * Where the reading on a master is looked for: at its size for a gauge that is set to show it, or, most of all, at
     * nought.
     */
    public static List<Expected> zero(Length certified) {
        return List.of(new Expected(certified, ONE_TURN), new Expected(Length.ZERO, ONE_TURN));
    }

    /** Whether it can be as warm as that where {@code climate} is. */
    public static boolean temperature(ThermalData climate, Degrees read) {
        BigDecimal degrees = read.celsius().degrees();
        BigDecimal coldest = COLDEST.max(climate.shop().least().degrees().subtract(BELOW_THE_SHOP));
        return degrees.compareTo(coldest) >= 0
                && degrees.compareTo(WARMEST) <= 0
                && read.places() <= MOST_PLACES_OF_A_TEMPERATURE;
    }

    /** The readings behind a finding that are far off, or were made with a gauge whose setting is. */
    public static List<Measured> farOff(Finding finding) {
        if (finding instanceof RunOutFinding runOut) {
            return farOff(runOut.check(), runOut.measured());
        }
        if (finding instanceof SizeFinding size) {
            return farOff(size.check(), size.measured());
        }
        if (finding instanceof PlugFinding plug) {
            return plug.farOff();
        }
        return finding instanceof WiresFinding wires ? farOff(wires.check(), wires.measured()) : List.of();
    }

    /** The same of a plug before there is a finding: what it can be, its bore says. */
    static List<Measured> farOff(Plan plan, Check.PlugFit fit, List<Measured> plug) {
        return plug.stream()
                .filter(read ->
                        isFarOff(fit, read, reading(plan, fit, read.reading().setting(), List.of())))
                .toList();
    }

    /** The temperatures of a finding that are far off. */
    public static List<Degrees> farOffTemperatures(Finding finding) {
        return finding.warmth().map(Plausible::farOff).orElse(List.of());
    }

    /** Whether a figure behind a finding is far off: then nothing is advised but to read again. */
    public static boolean spoils(Finding finding) {
        return !farOff(finding).isEmpty() || !farOffTemperatures(finding).isEmpty();
    }

    /** The same before there is a finding. */
    static boolean spoils(Check check, List<Measured> measured, Optional<TemperatureEffect> warmth) {
        return !farOff(check, measured).isEmpty()
                || !warmth.map(Plausible::farOff).orElse(List.of()).isEmpty();
    }

    private static List<Degrees> farOff(TemperatureEffect warmth) {
        return Stream.of(warmth.part(), warmth.gauge())
                .flatMap(Optional::stream)
                .filter(read -> !temperature(warmth.climate(), read))
                .toList();
    }

    private static List<Measured> farOff(Check check, List<Measured> measured) {
        List<Length> before = measured.stream().map(Measured::raw).toList();
        return measured.stream()
                .filter(read ->
                        isFarOff(check, read, reading(check, read.reading().setting(), before)))
                .toList();
    }

    private static boolean isFarOff(Check check, Measured read, Optional<Expected> wanted) {
        return read.reading().setting().filter(set -> !set(check, set)).isPresent()
                || isImpossible(check, read)
                || wanted.filter(expected -> !expected.fits(read.raw())).isPresent();
    }

    /** Nothing that was ever cut has a size of nought or less. */
    private static boolean isImpossible(Check check, Measured read) {
        return !(check instanceof Check.RunOut) && read.value().signum() <= 0;
    }

    /** Wires of another size than the plan's are a choice; a master of another size is not. */
    private static boolean set(Check check, Setting setting) {
        if (setting.zero().isEmpty()) {
            return true;
        }
        Length certified = setting.certified().orElseThrow().length();
        boolean sound = check.means()
                .flatMap(Check.Means::reference)
                .filter(nominal -> !certified(nominal.length()).fits(certified))
                .isEmpty();
        return sound
                && zero(certified).stream()
                        .anyMatch(expected -> expected.fits(setting.zero().get().length()));
    }
}
