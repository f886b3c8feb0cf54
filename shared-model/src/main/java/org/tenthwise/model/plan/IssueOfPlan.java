package org.tenthwise.model.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One issue of a plan: why there is one, and who answers for it.
 *
 * @param number as the plan has it
 * @param reason why the plan was issued anew
 * @param by who changed it
 * @param approvedBy another person who approved it; absent where nobody did
 * @param on the day it was issued; absent where the plan does not say
 * @param affected the characteristics that a partial check of parts made before takes in, as a person confirmed them,
 *     by balloon or by name; empty where none is; absent where nobody said
 */
public record IssueOfPlan(
        String number,
        String reason,
        String by,
        Optional<String> approvedBy,
        Optional<LocalDate> on,
        Optional<List<String>> affected) {

    public IssueOfPlan {
        affected = affected.map(List::copyOf);
    }
}
