package org.tenthwise.model.tolerance;

/** Which of two limits. */
public enum Limit {
    LOWER,
    UPPER;

    public Limit other() {
        return this == LOWER ? UPPER : LOWER;
    }
}
