package org.tenthwise.model.run;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * The last record of the part number that was accepted when a run was begun, and what of it can be laid beside the run.
 *
 * @param run its id
 * @param head hash over all its entries as it stood then
 * @param at when it was accepted
 * @param issue of its plan
 * @param planHash of the text of its plan
 * @param gauges marks of those that were set in it
 * @param otherwise what the plan of the new run means otherwise: checks by what they are called
 */
public record AcceptedBefore(
        String run,
        String head,
        String acceptedBy,
        OffsetDateTime at,
        String issue,
        String planHash,
        String machine,
        String lot,
        List<String> gauges,
        List<String> otherwise) {

    public AcceptedBefore {
        gauges = gauges.stream().distinct().sorted().toList();
        otherwise = List.copyOf(otherwise);
    }
}
