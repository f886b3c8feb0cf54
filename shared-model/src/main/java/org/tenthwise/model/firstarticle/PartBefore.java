package org.tenthwise.model.firstarticle;

import java.time.LocalDate;
import java.util.Optional;
import org.tenthwise.model.plan.Plan;

/**
 * What is known of a part number from before the runs of a report.
 *
 * @param lastMade the day it was last made or measured before the first of them was begun; absent where there is none
 * @param baseline the plan of the run that a partial report stands on; absent for a full one, and where that run is not
 *     known
 */
public record PartBefore(Optional<LocalDate> lastMade, Optional<Plan> baseline) {

    /** Nothing at all. */
    public static final PartBefore NOTHING = new PartBefore(Optional.empty(), Optional.empty());
}
