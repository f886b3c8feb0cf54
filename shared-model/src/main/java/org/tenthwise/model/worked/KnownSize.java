package org.tenthwise.model.worked;

import java.util.Locale;

/** What is known before anything is read, and a size is worked out with. */
public enum KnownSize {
    APART,
    BAR,
    HEIGHT,
    SMALL_BALL,
    LARGE_BALL,
    CHORD,
    ROLL,
    ANGLE,
    PIN,
    WIDTH,
    BLOCK,
    TEETH,
    MODULE,
    PRESSURE_ANGLE,
    OVER,
    FIRST,
    SECOND;

    /** How a plan names it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
