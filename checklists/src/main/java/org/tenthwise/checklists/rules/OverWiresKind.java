package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** <em>thread-over-wires</em>: pitch diameter of an external thread from a measurement over three wires. */
final class OverWiresKind implements StepKind {

    private static final Set<Combine> SPEAK_FOR_A_ROOT = EnumSet.of(Combine.EACH, Combine.LARGEST);
    /** A pitch that was rounded differs by less. */
    private static final Length ROUNDED = Length.of("0.01", Unit.MILLIMETRE);

    @Override
    public boolean feelsHeat() {
        return true;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Unit unit = soFar.unit();
        SizeRules rules = new SizeRules(keys, unit);
        boolean designated = keys.has(DesignationRules.DESIGNATION);
        Optional<ThreadDesignation> designation =
                keys.ifAny(DesignationRules.DESIGNATION, key -> DesignationRules.read(keys));
        Optional<ScrewThread> thread = designated ? designation.map(ThreadDesignation::thread) : thread(keys, unit);
        Optional<Limits> limits = designated && !DesignationRules.limitsWritten(keys)
                ? designation.flatMap(named -> DesignationRules.limits(keys, named, unit))
                : LimitRules.OF_A_SIZE.readOfASize(keys, unit);
        thread.ifPresent(t -> limits.ifPresent(l -> judgeLimits(keys, t, l)));
        Optional<Written> wire = keys.size("wire", unit);
        thread.ifPresent(t -> wire.ifPresent(w -> judgeWire(keys, t, w)));
        Optional<Written> minorDiameter = keys.ifAny("minor_diameter", key -> keys.size(key, unit));
        Optional<Integer> minorStep = keys.ifAny("minor_step", key -> minorStep(keys, key, soFar));
        thread.ifPresent(t -> minorStep.ifPresent(number -> judgeGrooves(keys, t, number, soFar)));
        List<Place> places = new PlaceRules(keys, unit).read();
        int readingsEach = rules.readingsEach();
        Optional<SizeModifier> drawingSays = rules.drawingSays();
        Combine combine = rules.combine(places, readingsEach, drawingSays);
        boolean cutAgain = rules.cutAgain("thread", Optional.of(Limit.UPPER), limits, combine);
        Optional<Uncertainty> uncertainty = UncertaintyRules.named(keys, soFar.uncertainties(), QuantityKind.LENGTH);
        Written guardBand = rules.guardBand(limits, uncertainty);
        Cutting cutting = CuttingRules.ofStep(keys, unit, cutAgain, limits, guardBand, soFar.usualCutting());
        Optional<String> gauge = keys.ifAny("gauge", keys::text);
        return keys.built(() -> new OverWiresCheck(
                thread.orElseThrow(),
                limits.orElseThrow(),
                minorDiameter,
                minorStep,
                places,
                readingsEach,
                combine,
                cutAgain,
                guardBand,
                new Check.Means(GaugeKind.MICROMETER_OVER_WIRES, gauge, wire, uncertainty),
                cutting,
                drawingSays,
                List.of()));
    }

    /** The root of a thread is its largest anywhere: a mean, a smallest or a range says nothing of it. */
    private static Optional<Integer> minorStep(TableKeys keys, String key, PlanSoFar soFar) {
        Optional<Integer> number = soFar.earlier(keys, key, StepKinds.DIAMETER);
        number.flatMap(soFar::step)
                .flatMap(PlanSoFar.Known::check)
                .flatMap(Check::asSize)
                .filter(size -> !SPEAK_FOR_A_ROOT.contains(size.combine()))
                .ifPresent(size -> keys.problemUnlessKept(
                        key,
                        "plan.minor-step.combined",
                        key,
                        number.orElseThrow(),
                        size.combine().key()));
        return number;
    }

    /** The grooves a root was read across are those of this thread. */
    private static void judgeGrooves(TableKeys keys, ScrewThread thread, int number, PlanSoFar soFar) {
        soFar.step(number)
                .flatMap(PlanSoFar.Known::check)
                .flatMap(Check::asSize)
                .filter(size -> size.contact() instanceof Contact.InGrooves grooves
                        && (grooves.starts() != thread.starts()
                                || grooves.pitch().minus(thread.pitch()).abs().isAbove(ROUNDED)))
                .ifPresent(check -> keys.problemUnlessKept("minor_step", "plan.minor-step.grooves", number));
    }

    /** A pitch diameter lies between the core and the crest. */
    private static void judgeLimits(TableKeys keys, ScrewThread thread, Limits limits) {
        for (Limit which : Limit.values()) {
            limits.at(which)
                    .filter(limit -> !limit.length().isBelow(thread.diameter())
                            || !limit.length().isAbove(thread.basicMinorDiameter()))
                    .ifPresent(limit -> keys.problem(
                            which.name().toLowerCase(Locale.ROOT),
                            "plan.thread.no-pitch-diameter",
                            limit,
                            shown(thread.basicMinorDiameter(), limit),
                            shown(thread.diameter(), limit),
                            limit.unit().symbol()));
        }
    }

    private static BigDecimal shown(Length length, Written beside) {
        int places = beside.unit() == Unit.MILLIMETRE ? 3 : 4;
        return length.in(beside.unit()).setScale(places, RoundingMode.HALF_EVEN);
    }

    /** A wire flush with the crest or touching its very corners will still do. */
    private static void judgeWire(TableKeys keys, ScrewThread thread, Written wire) {
        WireSizes sizes = WireSizes.of(thread);
        boolean thin = wire.length().isBelow(sizes.least());
        if (thin || wire.length().isAbove(sizes.greatest())) {
            int places = wire.unit() == Unit.MILLIMETRE ? 3 : 4;
            keys.problem(
                    "wire",
                    thin ? "plan.wire.thin" : "plan.wire.thick",
                    wire,
                    sizes.least().in(wire.unit()).setScale(places, RoundingMode.CEILING),
                    sizes.greatest().in(wire.unit()).setScale(places, RoundingMode.FLOOR),
                    wire.unit().symbol());
        }
    }

    private static Optional<ScrewThread> thread(TableKeys keys, Unit unit) {
        Optional<ThreadForm> form = keys.word("form", List.of(ThreadForm.values()), ThreadForm::key);
        Optional<Written> diameter = keys.size("diameter", unit);
        Optional<Length> pitch = PitchRules.pitch(keys, unit);
        int starts = PitchRules.starts(keys);
        if (form.isEmpty() || diameter.isEmpty() || pitch.isEmpty() || starts < 1) {
            return Optional.empty();
        }
        return keys.sensible(
                "diameter", () -> new ScrewThread(form.get(), diameter.get().length(), pitch.get(), starts));
    }
}
