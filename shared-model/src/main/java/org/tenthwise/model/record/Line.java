package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One step of the plan and all that was done about it.
 *
 * @param finding of the pass in hand
 * @param earlier findings of the earlier passes in which something was taken, oldest first
 * @param passes every pass with every reading, struck-out ones too
 * @param dispositions what was ever signed for it, where it did not pass, in force or lapsed
 * @param waitingFor steps that a hold point before this one waits for; empty if the step is open
 * @param asked whether it is in this run; what is not is never found, settled or open
 */
public record Line(
        Step step,
        Finding finding,
        List<Finding> earlier,
        List<Pass> passes,
        List<Disposing> dispositions,
        List<Integer> waitingFor,
        boolean asked) {

    public Line {
        earlier = List.copyOf(earlier);
        passes = List.copyOf(passes);
        dispositions = List.copyOf(dispositions);
        waitingFor = List.copyOf(waitingFor);
    }

    /** The same, waiting for other steps. */
    Line waitingFor(List<Integer> steps) {
        return steps.equals(waitingFor) ? this : new Line(step, finding, earlier, passes, dispositions, steps, asked);
    }

    /** The pass in hand. */
    public Pass pass() {
        return passes.get(passes.size() - 1);
    }

    /** What one of the passes came to; absent for an earlier one in which nothing was taken. */
    public Optional<Finding> found(Pass of) {
        if (of.number() == passes.size()) {
            return Optional.of(finding);
        }
        long before = passes.stream()
                .limit(of.number() - 1L)
                .filter(pass -> !pass.isEmpty())
                .count();
        return of.isEmpty() ? Optional.empty() : Optional.of(earlier.get((int) before));
    }

    /** How many cuts were taken of the step before one of the passes. */
    public int cutsBefore(Pass of) {
        return (int)
                passes.stream().limit(of.number()).filter(Pass::isAfterACut).count();
    }

    /** The disposition signed last, where it does not hold any more. */
    public Optional<Disposing> lapsed() {
        return dispositions.stream().reduce((earlier, later) -> later).filter(last -> !last.inForce());
    }

    public boolean held() {
        return !waitingFor.isEmpty();
    }

    /** The disposition in force. */
    public Optional<StepEvent.DispositionSigned> disposed() {
        return dispositions.stream()
                .filter(Disposing::inForce)
                .map(Disposing::disposed)
                .findFirst();
    }

    /** Whether it is a characteristic: a requirement of the drawing. */
    public boolean isOfDrawing() {
        return step.isOfDrawing();
    }

    /** Used as it is, by concession; only a characteristic can be. */
    public boolean conceded() {
        return isOfDrawing() && isDisposed(Disposition.USE_AS_IS);
    }

    /** Whether it was ever given into repair, which no later entry undoes; only a characteristic can be. */
    public boolean repaired() {
        return isOfDrawing()
                && dispositions.stream().anyMatch(signed -> signed.disposed().disposition() == Disposition.REPAIR);
    }

    /** Settled, yet not as the drawing has it: conceded, or passed after a repair. */
    public boolean byConcession() {
        return finding.verdict().passed() ? repaired() : conceded();
    }

    /**
     * Gone on with though it did not pass; only what is not of the drawing can be. Runs of older plans have it as used
     * as it is.
     */
    public boolean carriedOn() {
        return !isOfDrawing()
                && !finding.verdict().passed()
                && (isDisposed(Disposition.CARRY_ON) || isDisposed(Disposition.USE_AS_IS));
    }

    /** Passed, used as it is by concession, or carried on; never what is not in this run. */
    public boolean settled() {
        return asked && isSettled();
    }

    /** Whether it is in this run and nothing is settled yet. */
    public boolean open() {
        return asked && !isSettled();
    }

    private boolean isSettled() {
        return finding.verdict().passed() || conceded() || carriedOn();
    }

    /** What is not found out yet cannot be signed for. */
    private boolean isDisposed(Disposition wanted) {
        return finding.verdict().standing() != VerdictKind.OPEN
                && disposed().filter(d -> d.disposition() == wanted).isPresent();
    }
}
