package org.tenthwise.model.record;

import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Run;

/**
 * One reading and what it means.
 *
 * @param value the size it stands for: the reading and its correction
 */
public record Measured(Run.Reading reading, Slot slot, Length value) {

    /** As typed. */
    public Length raw() {
        return reading.typed().length();
    }

    /** What was added to the reading, so that nothing is corrected silently. */
    public Length correction() {
        return value.minus(raw());
    }
}
