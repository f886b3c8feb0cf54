package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.plan.Check;

/** How the keys of one kind of step are read. */
interface StepKind {

    /** What the step asks for; absent where a problem was noted. */
    Optional<Check> read(TableKeys keys, PlanSoFar soFar);

    /** Whether what is measured is corrected to 20 °C. */
    default boolean feelsHeat() {
        return false;
    }

    /** Whether the plan must say how it is done: so for all that is measured or gauged. */
    default boolean needsMethod() {
        return true;
    }
}
