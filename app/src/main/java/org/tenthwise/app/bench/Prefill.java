package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
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
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Word;

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
        Unit unit = state.sheet().plan().unit();
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
                return size.check()
                        .asSize()
                        .filter(CheckOfSize::cutAgain)
                        .flatMap(cut -> fills(BenchKind.NEXT_CUT, Prefill.size(state, size, cut, empty)));
            }

            @Override
            public Optional<BenchKind> position(PositionFinding position) {
                return Optional.empty();
            }

            @Override
            public Optional<BenchKind> worked(WorkedFinding worked) {
                return Optional.empty();
            }

            @Override
            public Optional<BenchKind> plugFit(PlugFitFinding plug) {
                return fills(BenchKind.FIT, fit(plug, empty));
            }

            @Override
            public Optional<BenchKind> calculated(CalculatedFinding calculated) {
                return Optional.empty();
            }

            @Override
            public Optional<BenchKind> overWires(OverWiresFinding wires) {
                filled.put(BenchKind.THREAD_LIMITS, threadLimits(state, wires.check(), empty));
                return fills(BenchKind.WIRES, Prefill.wires(state, wires.check(), empty));
            }

            @Override
            public Optional<BenchKind> document(DocumentFinding document) {
                return Optional.empty();
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

    private static FormValues size(State state, SizeFinding finding, CheckOfSize size, FormValues empty) {
        Combine bound = size.isOne() ? size.combine() : Combine.EACH;
        FormValues filled = aim(
                        size.cutting().aim().or(state.sheet().run()::usualAim).orElse(Aim.ByLimits.MIDDLE), empty)
                .with(
                        CutInputs.SIDE,
                        size.feature()
                                .side()
                                .map(side -> side == Feature.Side.OUTSIDE ? NextCutForm.OUTSIDE : NextCutForm.INSIDE))
                .with(CutInputs.LOWER, size.limits().lower().map(Written::text))
                .with(CutInputs.UPPER, size.limits().upper().map(Written::text))
                .withWritten(
                        NextCutSum.GUARD_BAND,
                        Optional.of(size.guardBand())
                                .filter(band -> band.length().signum() > 0))
                .with(NextCutSum.COMBINE, Optional.ofNullable(COMBINED.get(bound)))
                .with(
                        CutInputs.REGISTER,
                        state.sheet()
                                .run()
                                .register()
                                .filter(any -> size.isTurned())
                                .map(Word::of))
                .withWritten(NextCutSum.LEAST_CUT, size.cutting().leastCut())
                .withWritten(
                        NextCutSum.OFFSET_STEP,
                        Optional.of(size.cutting().stepToCount(size.limits().unit())));
        return size.combine() == Combine.RANGE || isNotToBeCutBy(state, finding)
                ? filled
                : filled.with(NextCutSum.SIZES, sizes(finding, filled.unit()));
    }

    /**
     * Where the step itself names no cut, none comes out here without a hand typing the sizes; nor of a thread, whose
     * flanks bind a cut that this sum knows nothing of.
     */
    private static boolean isNotToBeCutBy(State state, SizeFinding finding) {
        return finding.missing() > 0
                || Plausible.spoils(finding)
                || finding.flanks().isPresent()
                || CutSoFar.contradicted(state.line())
                || ReadOtherwise.of(state.line(), state.sheet().run()).isPresent()
                || state.sheet().run().closed().isPresent();
    }

    private static FormValues aim(Aim aim, FormValues filled) {
        if (aim instanceof Aim.Size size) {
            return filled.with(NextCutForm.AIM_BY, NextCutForm.SIZE)
                    .withWritten(NextCutSum.AIM, Optional.of(size.size()));
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
        Check check = state.inHand().check();
        if (check.asSize().isEmpty() || check.underWires().isPresent()) {
            return empty;
        }
        Optional<ThermalData> climate = state.sheet().plan().climate();
        return empty.with(
                        AtTwentySum.READING,
                        last(state)
                                .map(read -> read.value()
                                        .minus(read.forTemperature().orElse(Length.ZERO))
                                        .minus(read.forContact().orElse(Length.ZERO)))
                                .map(read -> FormValues.typed(read, empty.unit())))
                .with(AtTwentySum.PART_ALPHA, climate.map(ThermalData::part).map(Prefill::millionths))
                .with(AtTwentySum.GAUGE_ALPHA, climate.map(ThermalData::gauge).map(Prefill::millionths))
                .with(
                        AtTwentySum.PART_TEMP,
                        state.pass().temperature(MeasuredBody.PART).map(Prefill::celsius))
                .with(
                        AtTwentySum.GAUGE_TEMP,
                        state.pass().temperature(MeasuredBody.GAUGE).map(Prefill::celsius));
    }

    private static String millionths(ThermalData.Growth growth) {
        return growth.expansion().millionths().toPlainString();
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
                .map(reading ->
                        FormValues.typed(reading.typed(), state.sheet().plan().unit()))
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
        return ThreadFields.fill(empty, check.thread())
                .withWritten(
                        WireInputs.WIRE,
                        state.setting().flatMap(Setting::certified).or(() -> check.with()
                                .reference()))
                .withWritten(WireInputs.MINOR_DIAMETER, check.minorDiameter())
                .withWritten(OverWiresSum.OVER_WIRES, last(state).map(read -> read.reading()
                        .typed()));
    }

    private static Optional<FormValues> zone(State state) {
        Matcher zone = origin(state)
                .map(NAMED::matcher)
                .orElseGet(() -> ON_A_DIAMETER.matcher(state.inHand().drawing().requirement() + " "
                        + state.inHand().name()));
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
}
