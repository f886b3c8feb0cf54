package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** What may be cut next on the strength of what was read. */
final class ProposalAssessment {

    private ProposalAssessment() {}

    /**
     * Nothing before every place of the pass is read, unless someone signed to cut on what is there, and nothing where
     * no metal is left to take. A range of sizes is brought in by no even cut.
     *
     * @param measured at 20 °C where that is asked for
     * @param read what they come to by themselves, were nothing missing
     * @param atMost what another size that the same tool cuts lets come off this one, on the size; absent where none
     *     binds it
     */
    static Optional<Proposal> of(
            CheckOfSize asked, List<Measured> measured, Combined read, Pass pass, Run run, Optional<Length> atMost) {
        List<Slot> taken = measured.stream().map(Measured::slot).toList();
        List<Slot> unread =
                asked.slots().stream().filter(slot -> !taken.contains(slot)).toList();
        boolean metalLeft = read.verdict().standing() == VerdictKind.CUT_AGAIN || read.lightCut();
        if (!metalLeft
                || asked.combine() == Combine.RANGE
                || !unread.isEmpty() && pass.onThese().isEmpty()) {
            return Optional.empty();
        }
        Optional<Register> register =
                run.register().filter(any -> asked.feature().isTurned());
        List<Length> bound = asked.isOne()
                ? List.of(read.value().orElseThrow())
                : measured.stream().map(Measured::value).toList();
        EvenCut cut = aim(asked, run)
                .or(() -> atMost.map(other -> halfWay(asked, mostMetal(asked, bound), other)))
                .map(aim -> EvenCut.of(
                        asked.feature(),
                        asked.limits(),
                        asked.guardBand().length(),
                        aim,
                        asked.cutting().leastCut().map(Written::length),
                        Optional.of(stepOfSize(asked, register)),
                        asked.limits().width().isPresent() ? bound : List.of(mostMetal(asked, bound)),
                        atMost))
                .orElseGet(() -> new EvenCut.NoCut(EvenCut.Reason.NO_AIM, Optional.empty()));
        return Optional.of(new Proposal(cut, register, unread));
    }

    /**
     * Where the cut is to end. A size with one limit has no middle: work brought to the limit itself would be left
     * where the uncertainty of a reading rejects it, so only a size that the plan names is aimed at.
     */
    private static Optional<Length> aim(CheckOfSize asked, Run run) {
        Limits limits = asked.limits();
        Aim wanted = asked.cutting().aim().or(run::usualAim).orElse(Aim.ByLimits.MIDDLE);
        return Optional.of(wanted)
                .filter(aim -> limits.width().isPresent() || aim instanceof Aim.Size)
                .map(aim -> aim.of(limits, asked.feature().stillCutBeyond()));
    }

    /**
     * Half-way from the only limit to where another size that the tool cuts has to stop, or there where the tool cuts
     * no less; the limit where that leaves nothing between them, for a cut that is refused.
     */
    private static Length halfWay(CheckOfSize asked, Length size, Length other) {
        boolean comesDown = asked.feature().stillCutBeyond() == Limit.UPPER;
        Length limit = asked.limits().middle();
        Length toLimit = comesDown ? size.minus(limit) : limit.minus(size);
        Length needed = toLimit.plus(asked.guardBand().length());
        Length half = needed.plus(other).half();
        Length within = asked.isTooLittleToCut(half) ? other : half;
        Length off = other.isAbove(needed) ? within : needed;
        return comesDown ? size.minus(off) : size.plus(off);
    }

    /** Nothing binds the others: with the place that has most metal on the aim, every place is past the only limit. */
    private static Length mostMetal(CheckOfSize asked, List<Length> sizes) {
        return asked.feature().stillCutBeyond() == Limit.UPPER ? Length.greatest(sizes) : Length.least(sizes);
    }

    /**
     * The least change of the size that can be typed; while nobody said how the register counts, as if it counted
     * diameters.
     */
    private static Length stepOfSize(CheckOfSize asked, Optional<Register> register) {
        Length counted = asked.cutting().stepToCount(asked.limits().unit()).length();
        return register.map(counting -> counting.onDiameter(counted)).orElse(counted);
    }
}
