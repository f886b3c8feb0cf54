package org.tenthwise.checklists.rules;

import java.util.List;
import org.tenthwise.model.plan.Plan;

/** What came of reading a plan file. */
public sealed interface PlanReading {

    record Good(Plan plan) implements PlanReading {}

    /** @param problems every problem found, in the order of the file; at least one */
    record Bad(List<PlanProblem> problems) implements PlanReading {

        public Bad {
            problems = List.copyOf(problems);
        }
    }
}
