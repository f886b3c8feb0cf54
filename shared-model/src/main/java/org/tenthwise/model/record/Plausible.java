package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.plan.WorkedCheck;
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
 * of its limits; a small one may lie half its nominal away, an angle too. A comparing gauge is far off when it stands
 * more than 1 mm from where the nominal would put it, the reading on its master when it is more than 1 mm from zero and
 * from the certified size, a run-out indicator when it has moved more than a hundred times the limit, a reading of a
 * range when it lies more than a hundred times the limit from the first, a master or a wire when it lies more than a
 * hundredth from its nominal, a coordinate when it lies more than 1 mm and more than five zones from its true place,
 * and a direction when it puts the hole as far off. An angle is far off, too, where what it lacks of 90° or of 180° is
 * what the drawing asks for: a protractor laid on the other side reads that. Common practice.
 */
public final class Plausible {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
    private static final BigDecimal HUNDRED = new BigDecimal("100");
    private static final BigDecimal A_FEW = new BigDecimal("5");
    private static final Length ONE_TURN = Length.of("1", Unit.MILLIMETRE);
    private static final Length HALF_TURN = Length.of("180", Unit.DEGREE);

    private static final Length LEAST_ROOM_OF_A_MASTER = Length.of("0.02", Unit.MILLIMETRE);
    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("60");
    /** Colder than the shop by more than this is no part and no gauge that lay in it. */
    private static final BigDecimal BELOW_THE_SHOP = BigDecimal.TEN;
    /** A thermometer shows hundredths at the most; a figure with more came from another gauge. */
    private static final int MOST_PLACES_OF_A_TEMPERATURE = 2;

    private Plausible() {}

    /**
     * Where the next reading of a check is looked for; absent where nothing says so.
     *
     * @param setting what its gauge is set with
     * @param before what was read in the same pass
     */
    public static Optional<Expected> reading(Plan plan, Check check, Optional<Setting> setting, List<Length> before) {
        return reading(plan, check, first(check), setting, before);
    }

    /** The same of the reading that a slot has room for. */
    public static Optional<Expected> reading(
            Plan plan, Check check, Optional<Slot> slot, Optional<Setting> setting, List<Length> before) {
        return check.match(new Sought(
                slot, setting, before, step -> plan.step(step).check().asSize()));
    }

    private static Optional<Slot> first(Check check) {
        return check.slots().stream().findFirst();
    }

    /** Where a reading that nobody asked for must lie to be taken for the first of a check: within a few tolerances. */
    public static Optional<Expected> opening(Plan plan, Check check, Optional<Setting> setting) {
        return check.match(new Width(plan)).flatMap(width -> reading(plan, check, setting, List.of())
                .map(expected -> new Expected(expected.about(), width.times(A_FEW))));
    }

    /**
     * Where the next reading is looked for, kind by kind.
     *
     * @param slot what it is read into; absent where nothing is
     * @param bores what another step measures, by its number
     */
    private record Sought(
            Optional<Slot> slot,
            Optional<Setting> setting,
            List<Length> before,
            IntFunction<Optional<CheckOfSize>> bores)
            implements Check.Cases<Optional<Expected>> {

        @Override
        public Optional<Expected> asked(AskedCheck asked) {
            return Optional.empty();
        }

        @Override
        public Optional<Expected> runOut(RunOutCheck runOut) {
            return Optional.of(new Expected(Length.ZERO, runOut.limit().length().times(HUNDRED)));
        }

        @Override
        public Optional<Expected> size(SizeCheck size) {
            return size.limitsOfASize()
                    .map(limits -> compared(limits.middle(), setting).orElseGet(() -> NearNominal.size(size)))
                    .or(() -> range(size.limits(), before));
        }

        @Override
        public Optional<Expected> indicated(IndicatedCheck indicated) {
            return range(indicated.limits(), before);
        }

        @Override
        public Optional<Expected> angle(AngleCheck angle) {
            return angle.limitsOfASize().map(NearNominal::angle).or(() -> range(angle.limits(), before));
        }

        @Override
        public Optional<Expected> position(PositionCheck position) {
            return slot.map(asked -> Coordinates.asked(position, asked));
        }

        @Override
        public Optional<Expected> scale(ScaleCheck scale) {
            return scale.limitsOfASize()
                    .map(limits -> OnAScale.expected(limits, scale.rule().isPresent()))
                    .orElseGet(() -> range(scale.limits(), before));
        }

        @Override
        public Optional<Expected> worked(WorkedCheck worked) {
            return worked.limitsOfASize()
                    .flatMap(limits -> worked.by().reading(limits.middle()))
                    .map(NearNominal::reading);
        }

        @Override
        public Optional<Expected> plugFit(PlugFitCheck fit) {
            return bores.apply(fit.boreStep()).map(CheckOfSize::limits).map(bore -> compared(bore.middle(), setting)
                    .orElseGet(() -> NearNominal.size(bore)));
        }

        @Override
        public Optional<Expected> calculated(CalculatedCheck calculated) {
            return Optional.empty();
        }

        @Override
        public Optional<Expected> overWires(OverWiresCheck wires) {
            return Optional.of(Plausible.overWires(wires, setting));
        }

        @Override
        public Optional<Expected> document(DocumentCheck document) {
            return Optional.empty();
        }
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

    private static Optional<Expected> range(Limits limits, List<Length> before) {
        Length most = limits.upper().or(limits::lower).orElseThrow().length();
        return before.stream().findFirst().map(first -> new Expected(first, most.times(HUNDRED)));
    }

    private static Expected overWires(OverWiresCheck wires, Optional<Setting> setting) {
        Length nominal = setting.flatMap(Setting::certified)
                .map(wire -> new MeasurementOverWires(wires.thread(), wire.length())
                        .overWires(wires.pitchDiameter().middle()))
                .orElse(wires.thread().diameter());
        return new Expected(nominal, nominal.times(QUARTER));
    }

    /** Whether what was worked out is far off what the drawing asks for. */
    static boolean isFarOff(WorkedCheck check, Length result) {
        return result.signum() <= 0
                || check.limitsOfASize()
                        .map(limits -> limits.unit().isOfAngle() ? NearNominal.angle(limits) : NearNominal.size(limits))
                        .filter(expected -> !expected.fits(result))
                        .isPresent();
    }

    /** Whether a temperature of it is far off. */
    static boolean isFarOff(TemperatureEffect warmth) {
        return !farOff(warmth).isEmpty();
    }

    /** Where the certified size of a master or of wires is looked for. */
    public static Expected certified(Length nominal) {
        return new Expected(nominal, Length.greatest(List.of(nominal.times(HUNDREDTH), LEAST_ROOM_OF_A_MASTER)));
    }

    /**
     * Where the reading on a master is looked for: at its size for a gauge that is set to show it, or, most of all, at
     * zero.
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

    /**
     * The readings of a plug that are far off, or were made with a gauge whose setting is: what it can be, its bore
     * says.
     */
    static List<Measured> farOff(Plan plan, PlugFitCheck fit, List<Measured> plug) {
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
        return !finding.farOff().isEmpty() || !farOffTemperatures(finding).isEmpty();
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

    /** The same of a check that is judged by what it measures alone. */
    static List<Measured> farOff(Check check, List<Measured> measured) {
        List<Length> before = measured.stream().map(Measured::raw).toList();
        return measured.stream()
                .filter(read -> isFarOff(
                        check,
                        read,
                        check.match(new Sought(
                                Optional.of(read.slot()), read.reading().setting(), before, step -> Optional.empty()))))
                .toList();
    }

    /** Whether what an angle lacks of 90° or of 180° is what its check asks for. */
    public static boolean isOfTheOtherSide(Check check, Measured read) {
        return check.match(new Sought(
                        Optional.of(read.slot()),
                        read.reading().setting(),
                        List.of(read.raw()),
                        step -> Optional.empty()))
                .filter(expected -> expected.isMistaken(read.raw()))
                .isPresent();
    }

    static boolean isFarOff(Check check, Measured read, Optional<Expected> wanted) {
        return read.reading().setting().filter(set -> !set(check, set)).isPresent()
                || isImpossible(check, read)
                || wanted.filter(expected -> !expected.fits(read.raw())).isPresent();
    }

    /** Nothing that was ever cut has a size of zero or less, and no two faces stand at more than half a turn. */
    private static boolean isImpossible(Check check, Measured read) {
        boolean over =
                read.value().kind().equals(HALF_TURN.kind()) && read.value().isAbove(HALF_TURN);
        return !check.readsBelowZero(read.slot()) && (over || read.value().signum() <= 0);
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
