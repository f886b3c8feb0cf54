package org.tenthwise.model.plan;

/** Whether the temperatures of part and gauge are asked for at a step. */
public enum TemperatureAsked {
    NEVER,
    /**
     * Where the worst correction is a noticeable part of the tolerance; not where one limit has no tolerance to set it
     * against.
     */
    WHERE_IT_MATTERS,
    ALWAYS
}
