package org.tenthwise.checklists.rules;

import java.util.List;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;

/** What came of reading a plan file. */
public sealed interface PlanReading {

    /** @param requirements what was read from words of the drawing that steps lean on, a sentence each */
    record Good(Plan plan, List<Message> requirements) implements PlanReading {

        public Good {
            requirements = List.copyOf(requirements);
        }
    }

    /** @param problems every problem found, in the order of the file; at least one */
    record Bad(List<PlanProblem> problems) implements PlanReading {

        public Bad {
            problems = List.copyOf(problems);
        }
    }
}
