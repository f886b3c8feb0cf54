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
        Limit metalSide = asked.feature().stillCutBeyond();
        Optional<Register> register =
                run.register().filter(any -> asked.feature().isTurned());
        Length aim = asked.cutting()
                .aim()
                .or(run::usualAim)
                .orElse(Aim.ByLimits.MIDDLE)
                .of(asked.limits(), metalSide);
        EvenCut cut = EvenCut.of(
                asked.feature(),
                asked.limits(),
                asked.guardBand().length(),
                aim,
                asked.cutting().leastCut().map(Written::length),
                Optional.of(stepOfSize(asked, register)),
                asked.isOne()
                        ? List.of(read.value().orElseThrow())
                        : measured.stream().map(Measured::value).toList(),
                atMost);
        return Optional.of(new Proposal(cut, register, unread));
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
