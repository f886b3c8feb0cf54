package org.tenthwise.model.worked;

import org.tenthwise.model.words.Word;

/** The ways of working a size out, by name. */
public enum WorkedWay {
    TWO_DIAMETERS,
    SINE_BAR,
    ROLLERS,
    BALLS,
    CHORD,
    ROLLS,
    DOVETAIL,
    KEYWAY,
    VEE,
    OVER_PINS,
    SPAN,
    CENTRES;

    /** How a plan names it. */
    public String key() {
        return Word.of(this);
    }
}
