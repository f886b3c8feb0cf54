package org.tenthwise.model.plan;

/** What holds the work, and so what can be moved to true it up. */
public enum Holding {

    /** Four jaws that move each by itself. */
    FOUR_JAW("four-jaw", 4),
    /** Three jaws that a scroll moves together. */
    THREE_JAW("three-jaw", 3),
    /** Three jaws that power moves together. */
    POWER_CHUCK("power-chuck", 3),
    COLLET("collet", 0),
    CENTRES("centres", 0),
    FACE_PLATE("face-plate", 0),
    STEADY("steady", 0),
    /** The plan does not say. */
    UNSAID("", 0);

    private final String key;
    private final int jaws;

    Holding(String key, int jaws) {
        this.key = key;
        this.jaws = jaws;
    }

    /** How plan files name it. */
    public String key() {
        return key;
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
