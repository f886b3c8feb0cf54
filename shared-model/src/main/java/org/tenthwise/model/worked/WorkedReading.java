package org.tenthwise.model.worked;

import org.tenthwise.model.words.Word;

/** What is read at a place, each a length. */
public enum WorkedReading {
    LARGE,
    SMALL,
    STACK,
    LOW,
    HIGH,
    SMALL_DEPTH,
    LARGE_DEPTH,
    ARC_HEIGHT,
    OVER,
    DROP,
    OVER_PINS,
    BETWEEN_PINS,
    SHAFT,
    FAR_SIDE,
    ABOVE,
    SPAN,
    OVER_PLUGS,
    BETWEEN_PLUGS,
    WEB;

    /** Whether it is counted from a face that what is read can stand proud of, or lie below. */
    public boolean canBeBelowZero() {
        return this == SMALL_DEPTH || this == LARGE_DEPTH || this == ABOVE;
    }

    /** As files for programs call it. */
    public String key() {
        return Word.of(this);
    }
}
