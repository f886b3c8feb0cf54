package org.tenthwise.app.session;

import java.util.List;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Run;

/** How the pass in hand is read, as chosen before its first reading; what has been read then tells by itself. */
final class WayOfReading {

    private boolean sweep;
    private boolean readingsFirst;

    void sweep(boolean wanted) {
        sweep = wanted;
    }

    void readingsFirst(boolean wanted) {
        readingsFirst = wanted;
    }

    void forget() {
        sweep = false;
        readingsFirst = false;
    }

    /** Whether a run-out is read as highest and lowest. */
    boolean sweeping(Step step, Run.Pass pass) {
        return step.check() instanceof Check.RunOut runOut && (sweep
                || runOut.rounds().get(0).sweep().stream().anyMatch(slot -> pass.standing().containsKey(slot.key())));
    }

    /** Whether the temperatures wait until everything is read. */
    boolean readingsFirst(Run.Pass pass) {
        return readingsFirst || !pass.standing().isEmpty();
    }

    List<Slot> slots(Step step, Run.Pass pass) {
        return step.check() instanceof Check.RunOut runOut && sweeping(step, pass) ? runOut.rounds().get(0).sweep() : step.check().slots();
    }
}
