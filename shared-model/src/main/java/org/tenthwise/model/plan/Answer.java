package org.tenthwise.model.plan;

/** What can be answered to a {@link Question}. */
public enum Answer {
    YES,
    NO,
    FREELY,
    WITH_DRAG,
    NOT_AT_ALL,
    OPPOSITE_GROOVES,
    SQUARE_ACROSS
}
