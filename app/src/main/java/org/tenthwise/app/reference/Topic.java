package org.tenthwise.app.reference;

import org.tenthwise.model.words.Word;

/** What a file of published cases is about. */
public enum Topic {
    THREADS,
    WIRES,
    PROFILES,
    TEETH,
    CUTTING,
    LIMITS,
    CHAIN,
    GAUGING,
    RUNOUT,
    POSITION,
    TAPER,
    ROUGHNESS,
    DECISION,
    TEMPERATURE,
    STATISTICS;

    /** Small letters, as the file and the command call it. */
    public String word() {
        return Word.of(this);
    }
}
