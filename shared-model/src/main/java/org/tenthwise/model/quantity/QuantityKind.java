package org.tenthwise.model.quantity;

/** What a figure is of. Figures of two kinds are never added, compared or written in one another's units. */
public enum QuantityKind {
    LENGTH,
    ANGLE
}
