package org.tenthwise.app.history;

import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Step;

/**
 * Which part before is looked for.
 *
 * @param serial of the part in hand: another run on the same part is not the part before
 * @param before place in the ledger: what was taken later is not looked at
 */
public record LastPartQuery(PartId part, String serial, Step step, long before) {

    /** Whether a step of another plan asks for the same: a plan may have another check under the number. */
    public boolean isOf(Step other) {
        return other.number() == step.number()
                && other.name().equals(step.name())
                && other.check().key().equals(step.check().key());
    }
}
