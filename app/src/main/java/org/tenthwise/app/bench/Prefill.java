package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.cutting.CutInputs;
import org.tenthwise.app.sums.cutting.NextCutSum;
import org.tenthwise.app.sums.fit.FitSum;
import org.tenthwise.app.sums.fit.ZoneInputs;
import org.tenthwise.app.sums.gauge.RunOutByAngleSum;
import org.tenthwise.app.sums.temperature.AtTwentySum;
import org.tenthwise.app.sums.thread.DesignationInputs;
import org.tenthwise.app.sums.thread.OverWiresSum;
import org.tenthwise.app.sums.thread.WireInputs;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;

/**
 * What the step in hand knows already, filled into the sums it belongs to.
 *
 * @param unit of the step's limits, or of the plan
 * @param fitting the sum the step is most likely looked at for; absent where none is
 * @param filled by sum
 */
public record Prefill(Unit unit, Optional<BenchKind> fitting, Map<BenchKind, FormValues> filled) {

    /** A size with a tolerance zone, as a drawing writes it. */
    private static final String ZONE = "(\\d+(?:\\.\\d+)?)\\s+([A-Za-z]{1,2})(\\d{1,2})\\b";

    private static final Pattern ON_A_DIAMETER = Pattern.compile("[⌀Øø]\\s*" + ZONE);
    private static final Pattern NAMED = Pattern.compile("[⌀Øø]?\\s*" + ZONE);

    private static final Map<Combine, String> COMBINED = Map.of(
            Combine.EACH, "each", Combine.MEAN, "mean", Combine.LARGEST, "largest", Combine.SMALLEST, "smallest");

    public Prefill {
        filled = Map.copyOf(filled);
    }

    /** Without a run. */
    public static Prefill nothing() {
        return new Prefill(Unit.MILLIMETRE, Optional.empty(), Map.of());
    }

    public static Prefill of(State state) {
        Unit unit = state.inHand()
                .limits()
                .map(Limits::unit)
                .orElse(state.sheet().plan().unit());
        Map<BenchKind, FormValues> filled = new EnumMap<>(BenchKind.class);
        FormValues empty = FormValues.nothing(unit);
        Optional<BenchKind> fitting = state.line().finding().match(new Finding.Cases<>() {
            @Override
            public Optional<BenchKind> asked(AskedFinding answers) {
                return Optional.empty();
            }

            @Override
            public Optional<BenchKind> runOut(RunOutFinding runOut) {
                return fills(BenchKind.RUN_OUT, Prefill.runOut(state, runOut.check(), empty));
            }

            @Override
            public Optional<BenchKind> size(SizeFinding size) {
                return size.check().cutAgain()
                        ? fills(BenchKind.NEXT_CUT, Prefill.size(state, size, empty))
                        : Optional.empty();
            }

            @Override
            public Optional<BenchKind> plugFit(PlugFitFinding plug) {
                return fills(BenchKind.FIT, fit(plug, empty));
            }

            @Override
            public Optional<BenchKind> overWires(OverWiresFinding wires) {
                filled.put(BenchKind.THREAD_LIMITS, threadLimits(state, wires.check(), empty));
                return fills(BenchKind.WIRES, Prefill.wires(state, wires.check(), empty));
            }

            private Optional<BenchKind> fills(BenchKind kind, FormValues with) {
                filled.put(kind, with);
                return Optional.of(kind);
            }
        });
        FormValues warm = warm(state, empty);
        if (!warm.texts().isEmpty()) {
            filled.put(BenchKind.TEMPERATURE, warm);
        }
        zone(state).ifPresent(zone -> filled.put(BenchKind.ZONE, zone));
        return new Prefill(unit, fitting.or(() -> zone(state).map(zone -> BenchKind.ZONE)), filled);
    }

    private static FormValues size(State state, SizeFinding finding, FormValues empty) {
        SizeCheck size = finding.check();
        FormValues filled = empty.with(
                CutInputs.SIDE, size.feature() == Feature.DIAMETER ? NextCutForm.OUTSIDE : NextCutForm.INSIDE);
        filled = size.limits().lower().isPresent()
                ? filled.with(CutInputs.LOWER, size.limits().lower().get().text())
                : filled;
        filled = size.limits().upper().isPresent()
                ? filled.with(CutInputs.UPPER, size.limits().upper().get().text())
                : filled;
        filled = size.guardBand().length().signum() > 0
                ? filled.with(NextCutSum.GUARD_BAND, text(size.guardBand(), filled.unit()))
                : filled;
        Combine bound = size.isOne() ? size.combine() : Combine.EACH;
        filled = COMBINED.containsKey(bound) ? filled.with(NextCutSum.COMBINE, COMBINED.get(bound)) : filled;
        filled = aim(size.cutting().aim().or(state.sheet().run()::usualAim).orElse(Aim.ByLimits.MIDDLE), filled);
        Optional<Register> register = state.sheet().run().register().filter(any -> size.isTurned());
        filled = register.isPresent()
                ? filled.with(
                        CutInputs.REGISTER,
                        register.get() == Register.RADIUS ? NextCutForm.RADIUS : NextCutForm.DIAMETER)
                : filled;
        filled = size.cutting().leastCut().isPresent()
                ? filled.with(
                        NextCutSum.LEAST_CUT, text(size.cutting().leastCut().get(), filled.unit()))
                : filled;
        filled = filled.with(
                NextCutSum.OFFSET_STEP,
                text(size.cutting().stepToCount(size.limits().unit()), filled.unit()));
        return size.combine() == Combine.RANGE || isNotToBeCutBy(state, finding)
                ? filled
                : filled.with(NextCutSum.SIZES, sizes(finding, filled.unit()));
    }

    /** Where the step itself names no cut, none comes out here without a hand typing the sizes. */
    private static boolean isNotToBeCutBy(State state, SizeFinding finding) {
        return finding.missing() > 0
                || Plausible.spoils(finding)
                || CutSoFar.contradicted(state.line())
                || state.sheet().run().closed().isPresent();
    }

    private static FormValues aim(Aim aim, FormValues filled) {
        if (aim instanceof Aim.Size size) {
            return filled.with(NextCutForm.AIM_BY, NextCutForm.SIZE)
                    .with(NextCutSum.AIM, text(size.size(), filled.unit()));
        }
        return filled.with(NextCutForm.AIM_BY, ((Aim.ByLimits) aim).key());
    }

    /** All of them, as no cut is worked out from some. */
    private static String sizes(SizeFinding finding, Unit unit) {
        return finding.measured().stream()
                .map(read -> FormValues.typed(read.value(), unit))
                .collect(Collectors.joining(" "));
    }

    /** The last size before it was corrected for temperature and contact, and what plan and pass say of heat. */
    private static FormValues warm(State state, FormValues empty) {
        Map<String, String> texts = new HashMap<>();
        Check check = state.inHand().check();
        if (check.asSize().isPresent() && check.underWires().isEmpty()) {
            last(state)
                    .ifPresent(read -> texts.put(
                            AtTwentySum.READING.key(),
                            FormValues.typed(
                                    read.value()
                                            .minus(read.forTemperature().orElse(Length.ZERO))
                                            .minus(read.forContact().orElse(Length.ZERO)),
                                    empty.unit())));
            state.sheet().plan().climate().ifPresent(climate -> {
                texts.put(
                        AtTwentySum.PART_ALPHA.key(),
                        climate.part().expansion().millionths().toPlainString());
                texts.put(
                        AtTwentySum.GAUGE_ALPHA.key(),
                        climate.gauge().expansion().millionths().toPlainString());
            });
            state.pass()
                    .temperature(MeasuredBody.PART)
                    .ifPresent(read -> texts.put(AtTwentySum.PART_TEMP.key(), celsius(read)));
            state.pass()
                    .temperature(MeasuredBody.GAUGE)
                    .ifPresent(read -> texts.put(AtTwentySum.GAUGE_TEMP.key(), celsius(read)));
        }
        return new FormValues(empty.unit(), texts);
    }

    /** The sums of the bench are in °C. */
    private static String celsius(Degrees read) {
        return read.scale() == TemperatureScale.CELSIUS
                ? read.text()
                : read.celsius().degrees().setScale(3, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static FormValues runOut(State state, RunOutCheck check, FormValues empty) {
        List<BigDecimal> angles = check.angles();
        String number = String.valueOf(angles.size());
        FormValues even = empty.with(RunOutForm.PLACES, number)
                .with(RunOutForm.LIMIT, check.limit().text())
                .with(RunOutForm.JAW_COUNT, String.valueOf(check.jaws()));
        even = check.firstJaw().signum() == 0
                ? even
                : even.with(RunOutForm.FIRST_JAW, check.firstJaw().toPlainString());
        boolean evenly = RunOutForm.EVEN.contains(number)
                && IntStream.range(0, angles.size())
                        .allMatch(i -> RunOutForm.angles(empty.with(RunOutForm.PLACES, number))
                                        .get(i)
                                        .compareTo(angles.get(i))
                                == 0);
        FormValues placed = evenly
                ? even
                : even.with(RunOutForm.PLACES, RunOutForm.OTHER)
                        .with(
                                RunOutByAngleSum.ANGLES,
                                String.join(
                                        " ",
                                        angles.stream()
                                                .map(BigDecimal::toPlainString)
                                                .toList()));
        List<String> read = check.bySection().get(0).byAngle().stream()
                .flatMap(slot -> Optional.ofNullable(state.pass().standing().get(slot.key())).stream())
                .map(reading -> text(reading.typed(), state.sheet().plan().unit()))
                .toList();
        return read.isEmpty() || Plausible.spoils(state.line().finding())
                ? placed
                : placed.with(RunOutByAngleSum.READINGS, String.join(" ", read));
    }

    private static FormValues fit(PlugFitFinding finding, FormValues empty) {
        FormValues filled = empty.with(FitForm.BY, FitForm.SIZES);
        filled = leastAndGreatest(filled, finding.bore(), FitSum.BORE_LEAST, FitSum.BORE_GREATEST);
        return leastAndGreatest(
                filled, finding.plug().stream().map(Measured::value).toList(), FitSum.PLUG_LEAST, FitSum.PLUG_GREATEST);
    }

    private static FormValues leastAndGreatest(
            FormValues filled, Collection<Length> sizes, Input<Length> least, Input<Length> greatest) {
        return sizes.isEmpty()
                ? filled
                : filled.with(least, FormValues.typed(Length.least(sizes), filled.unit()))
                        .with(greatest, FormValues.typed(Length.greatest(sizes), filled.unit()));
    }

    private static FormValues wires(State state, OverWiresCheck check, FormValues empty) {
        FormValues filled = ThreadFields.fill(empty, check.thread());
        Optional<Written> wire = state.setting().flatMap(Setting::certified).or(() -> check.with()
                .reference());
        filled = wire.isPresent() ? filled.with(WireInputs.WIRE, text(wire.get(), filled.unit())) : filled;
        filled = check.minorDiameter().isPresent()
                ? filled.with(
                        WireInputs.MINOR_DIAMETER, text(check.minorDiameter().get(), filled.unit()))
                : filled;
        Optional<Measured> last = last(state);
        return last.isPresent()
                ? filled.with(OverWiresSum.OVER_WIRES, text(last.get().reading().typed(), filled.unit()))
                : filled;
    }

    private static Optional<FormValues> zone(State state) {
        Matcher zone = origin(state)
                .map(NAMED::matcher)
                .orElseGet(() -> ON_A_DIAMETER.matcher(
                        state.inHand().drawing() + " " + state.inHand().name()));
        return zone.find() && ZoneFields.isKnown(zone.group(2), zone.group(3))
                ? Optional.of(FormValues.nothing(Unit.MILLIMETRE)
                        .with(ZoneInputs.DIAMETER, zone.group(1))
                        .with(ZoneForm.PART, ZoneFields.isHole(zone.group(2)) ? ZoneForm.HOLE : ZoneForm.SHAFT)
                        .with(ZoneForm.LETTER, zone.group(2))
                        .with(ZoneForm.GRADE, zone.group(3)))
                : Optional.empty();
    }

    /** What the plan names the limits of the step by; absent where it writes them out. */
    private static Optional<String> origin(State state) {
        return state.inHand().limits().flatMap(Limits::origin).map(Origin::designation);
    }

    /** Form, diameter and pitch, and the class where the plan names it. */
    private static FormValues threadLimits(State state, OverWiresCheck check, FormValues empty) {
        FormValues thread = ThreadFields.fill(empty, check.thread());
        return origin(state)
                .map(named -> thread.with(
                        DesignationInputs.CLASS,
                        ThreadDesignation.read(named).threadClass().toString()))
                .orElse(thread);
    }

    /** The reading taken last; none where a figure of the pass is far off, as the sums would advise from it. */
    private static Optional<Measured> last(State state) {
        Finding finding = state.line().finding();
        return Plausible.spoils(finding)
                ? Optional.empty()
                : finding.measured().stream()
                        .max(Comparator.comparing(read -> read.reading().entry().seq()));
    }

    private static String text(Written written, Unit unit) {
        return written.unit() == unit ? written.text() : FormValues.typed(written.length(), unit);
    }
}
