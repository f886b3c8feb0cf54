package org.tenthwise.model.run;

import org.tenthwise.model.words.Refused;

/**
 * The earlier run that a run stands on, so that nobody can change it behind this one.
 *
 * @param run its id
 * @param head hash over all its entries as it stood when this run was begun
 */
public record Baseline(String run, String head) {

    public Baseline {
        if (run.isBlank() || head.isBlank()) {
            throw new Refused("model.occasion.baseline-of");
        }
    }
}
