package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/** How the offset register of a machine counts across the axis. */
public enum Register {
    DIAMETER,
    RADIUS;

    /** What the register counts for a change of a diameter. */
    public Length counts(Length onDiameter) {
        return this == DIAMETER ? onDiameter : onDiameter.half();
    }

    /** The same where a register counts it and is known; otherwise the change of the size itself. */
    public static Length counted(Length onSize, Optional<Register> register) {
        return register.map(counting -> counting.counts(onSize)).orElse(onSize);
    }

    /** The change of a diameter for what the register counts. */
    public Length onDiameter(Length counted) {
        return this == DIAMETER ? counted : counted.plus(counted);
    }
}
