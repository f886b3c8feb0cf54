package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/**
 * A run as a list shows it.
 *
 * @param plan absent where what was kept with the run cannot be read by this release
 * @param steps in the order of the plan; empty where that cannot be read
 */
public record RunSummary(RunFacts run, Optional<Plan> plan, List<StepSummary> steps) {

    public RunSummary {
        steps = List.copyOf(steps);
    }

    public String id() {
        return run.id();
    }

    /** The same, going on with another step. */
    public RunSummary at(int step) {
        return new RunSummary(run.at(step), plan, steps);
    }

    /** The step it would go on with; absent where the plan cannot be read. */
    public Optional<Step> inHand() {
        return plan.flatMap(read -> run.stand().map(stand -> read.step(stand.inHand())));
    }
}
