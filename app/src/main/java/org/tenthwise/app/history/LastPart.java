package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * What a step came to on the part before, judged by the plan that one was measured by. Nothing of it is a reading of
 * the part in hand.
 *
 * @param run of another serial
 * @param step as the plan of that run has it
 * @param readings of every pass, in the order they were taken
 */
public record LastPart(RunFacts run, Step step, StepSummary found, List<ReadingSummary> readings) {

    public LastPart {
        readings = List.copyOf(readings);
    }

    public boolean isOfAnotherRevision(Plan plan) {
        return !run.revision().equals(plan.part().revision());
    }

    /** Whether it was measured by another issue of the plan, or by another text under the same. */
    public boolean isOfAnotherPlan(Plan plan) {
        return !run.planHash().equals(plan.source().sha256());
    }

    /** Whether its limits were others than those of a step: what passed then need not pass now. */
    public boolean hadOtherLimits(Step now) {
        return differs(now, Limits::lower) || differs(now, Limits::upper);
    }

    private boolean differs(Step now, Function<Limits, Optional<Written>> limit) {
        Optional<Length> here = now.limits().flatMap(limit).map(Written::length);
        return !here.equals(step.limits().flatMap(limit).map(Written::length));
    }
}
