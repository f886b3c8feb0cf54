package org.tenthwise.model.plan;

import org.tenthwise.model.words.Word;

/** What holds the work, and so what can be moved to true it up. */
public enum Holding {

    /** Four jaws that move each by itself. */
    FOUR_JAW(4),
    /** Three jaws that a scroll moves together. */
    THREE_JAW(3),
    /** Three jaws that power moves together. */
    POWER_CHUCK(3),
    COLLET(0),
    CENTRES(0),
    FACE_PLATE(0),
    STEADY(0),
    /** The plan does not say. */
    UNSAID(0);

    private final int jaws;

    Holding(int jaws) {
        this.jaws = jaws;
    }

    /** How plan files name it. */
    public String key() {
        return this == UNSAID ? "" : Word.of(this);
    }

    /** 3 or 4; 0 for what has none. */
    public int jaws() {
        return jaws;
    }

    /** What plans that only give the number of jaws mean: four move each by itself, three together. */
    public static Holding ofJaws(int jaws) {
        return jaws == 4 ? FOUR_JAW : jaws == 3 ? THREE_JAW : UNSAID;
    }
}
