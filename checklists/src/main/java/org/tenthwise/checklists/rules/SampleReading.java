package org.tenthwise.checklists.rules;

import java.util.List;

/** What came of reading a readings file. */
public sealed interface SampleReading {

    record Good(ReadingsFile sample) implements SampleReading {}

    /** @param problems every problem found, in the order of the file; at least one */
    record Bad(List<PlanProblem> problems) implements SampleReading {

        public Bad {
            problems = List.copyOf(problems);
        }
    }
}
