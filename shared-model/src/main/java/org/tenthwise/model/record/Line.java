package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/**
 * One characteristic of the plan and all that was done about it.
 *
 * @param finding    of the pass in hand
 * @param earlier    findings of earlier passes, oldest first
 * @param passes     every pass with every reading, struck-out ones too
 * @param disposed   what was signed for it, where it did not pass
 * @param waitingFor steps that a hold point before this one waits for; empty if the step is open
 */
public record Line(Step step, Finding finding, List<Finding> earlier, List<Run.Pass> passes,
                   Optional<Event.Disposed> disposed, List<Integer> waitingFor) {

    public Line {
        earlier = List.copyOf(earlier);
        passes = List.copyOf(passes);
        waitingFor = List.copyOf(waitingFor);
    }

    public boolean held() {
        return !waitingFor.isEmpty();
    }

    public boolean conceded() {
        return disposed.filter(d -> d.disposition() == Disposition.USE_AS_IS).isPresent();
    }

    /** Passed, or used as it is by concession. */
    public boolean settled() {
        return finding.verdict().passed() || conceded();
    }
}
