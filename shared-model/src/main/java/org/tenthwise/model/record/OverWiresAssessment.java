package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.compute.thread.LeadAngle;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.RootClearance;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.OverWiresFinding.OverWiresReading;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Pitch diameter over wires, and whether the wires can be trusted on this thread: with a wire on the root no size is
 * known, so it is neither in nor out nor still to cut. Where the plan gives no root, that is so as soon as the basic
 * one could touch the wire. A root that another step measures is waited for.
 */
final class OverWiresAssessment {

    private OverWiresAssessment() {}

    /**
     * @param roots minor diameters another step measured: the largest counts for the room above it, or the one of the
     *     plan if that is larger still. What was cut since is not taken off it there: a root thought too high never
     *     makes wires trusted
     * @param leastRoot the least that step allows; absent where it has no lower limit
     * @param grooves what is found of the depths that the same tool cuts
     */
    static OverWiresFinding of(
            Plan plan,
            Step step,
            OverWiresCheck check,
            Pass pass,
            List<Measured> roots,
            Optional<Length> leastRoot,
            List<SizeFinding> grooves,
            Run run) {
        Optional<Length> measuredMinor = roots.stream().map(Measured::value).max(Length::compareTo);
        Optional<TemperatureEffect> warmth = TemperatureEffect.of(plan, step, pass);
        List<OverWiresReading> readings = pass.standing().isEmpty()
                ? List.of()
                : readings(check, pass, warmth.flatMap(TemperatureEffect::correction));
        List<Measured> measured =
                readings.stream().map(OverWiresReading::measured).toList();
        int temperatures = warmth.map(TemperatureEffect::missing).orElse(0);
        int missing = check.slots().size() - measured.size() + temperatures;
        Optional<Length> wire = readings.isEmpty()
                ? run.gauges()
                        .setting(step.number())
                        .flatMap(Setting::certified)
                        .map(Written::length)
                : measured.get(0)
                        .reading()
                        .setting()
                        .flatMap(Setting::certified)
                        .map(Written::length);
        WireSizes sizes = WireSizes.of(check.thread());
        boolean rootAwaited = check.minorStep().isPresent() && measuredMinor.isEmpty();
        Optional<Length> room = Stream.concat(
                        measuredMinor.stream(), check.minorDiameter().map(Written::length).stream())
                .max(Length::compareTo)
                .flatMap(root -> room(readings, root));
        boolean rootGiven =
                check.minorStep().isPresent() || check.minorDiameter().isPresent();
        Optional<Length> basicRoom =
                rootGiven ? Optional.empty() : room(readings, check.thread().basicMinorDiameter());
        boolean bottoms = room.filter(least -> least.signum() <= 0).isPresent();
        boolean untrusted =
                room.or(() -> basicRoom).filter(least -> least.signum() <= 0).isPresent();

        boolean spoilt = Plausible.spoils(check, measured, warmth);
        boolean settled = temperatures == 0 && !rootAwaited;
        Combined read = Combined.of(check, measured);
        Combined combined = (settled ? read.with(missing, check) : read.stillOpen()).provingNothingIf(spoilt);
        Verdict verdict = untrusted && combined.verdict().standing() != VerdictKind.OPEN
                ? Verdict.plain(VerdictKind.UNPROVEN)
                : combined.verdict();
        Function<Optional<Length>, Optional<Proposal>> offered = atMost -> settled && !untrusted && !spoilt
                ? ProposalAssessment.of(check, measured, read, pass, run, atMost)
                : Optional.empty();
        Optional<GrooveRoom> groove = GrooveRoom.least(grooves);
        Optional<Proposal> proposal = offered.apply(groove.map(GrooveRoom::most));
        Optional<Integer> grooveOver = groove.filter(any -> isShutBy(proposal, offered.apply(Optional.empty()), check))
                .map(GrooveRoom::step);
        Optional<Length> next =
                leastRoot.isEmpty() || roots.isEmpty() ? Optional.empty() : proposal.flatMap(of -> of.comesOff(check));
        RootCutSince cutSince = new RootCutSince(plan, step, check, run);
        boolean rootCutSince = cutSince.isSo(roots, pass);
        Optional<Length> rootNow = next.flatMap(any -> cutSince.now(roots, pass, measured));
        Optional<Length> rootUnder = rootNow.map(root -> leastRoot.orElseThrow().minus(root.minus(next.orElseThrow())))
                .filter(under -> under.signum() > 0);
        boolean rootStale = rootCutSince && next.isPresent() && (rootNow.isEmpty() || rootUnder.isPresent());
        return new OverWiresFinding(
                step,
                check,
                readings,
                wire,
                sizes,
                LeadAngle.degrees(check.thread(), check.thread().basicPitchDiameter()),
                room,
                basicRoom,
                rootAwaited,
                bottoms,
                combined.value(),
                combined.deciding(),
                combined.past(),
                rootUnder.isPresent() || rootStale || grooveOver.isPresent() ? Optional.empty() : proposal,
                grooveOver,
                rootUnder,
                rootCutSince,
                rootStale,
                verdict,
                missing,
                warmth);
    }

    /** Whether a depth lets no cut be taken that could be taken without it. */
    private static boolean isShutBy(Optional<Proposal> within, Optional<Proposal> free, OverWiresCheck check) {
        boolean even = free.flatMap(Proposal::change).isPresent();
        return free.flatMap(of -> of.comesOff(check)).isPresent()
                && within.flatMap(of -> even ? of.change() : of.comesOff(check)).isEmpty();
    }

    /** The least room over the readings; absent before the first. */
    static Optional<Length> room(List<OverWiresReading> readings, Length root) {
        return readings.stream()
                .map(reading -> RootClearance.of(reading.over(), reading.wire(), root))
                .min(Length::compareTo);
    }

    /**
     * Pitch diameters. At 20 °C the reading and the wires, which have grown with the gauge, are both seen with the part
     * at 20 °C: that leaves the thread as the drawing has it.
     */
    static List<OverWiresReading> readings(OverWiresCheck check, Pass pass, Optional<AtTwenty> toTwenty) {
        return SizeAssessment.measure(check.slots(), pass).stream()
                .map(raw -> {
                    MeasurementOverWires asRead = new MeasurementOverWires(check.thread(), certified(raw));
                    Length wire = toTwenty.map(at -> Nanometres.round(at.size(certified(raw))))
                            .orElse(certified(raw));
                    MeasurementOverWires sum = toTwenty.map(at -> new MeasurementOverWires(check.thread(), wire))
                            .orElse(asRead);
                    Length over = toTwenty.map(at -> Nanometres.round(at.size(raw.raw())))
                            .orElse(raw.raw());
                    Length pitchDiameter = sum.pitchDiameter(over);
                    Optional<Length> forTemperature =
                            toTwenty.map(at -> pitchDiameter.minus(asRead.pitchDiameter(raw.raw())));
                    return new OverWiresReading(
                            new Measured(raw.reading(), raw.slot(), pitchDiameter, forTemperature),
                            over,
                            wire,
                            sum.simplePitchDiameter(over),
                            sum.correctedPitchDiameter(over));
                })
                .toList();
    }

    private static Length certified(Measured measured) {
        return measured.reading()
                .setting()
                .flatMap(Setting::certified)
                .orElseThrow()
                .length();
    }
}
