package org.tenthwise.model.thread;

/** Which of the two parts of a thread. */
public enum ThreadSide {

    /** The screw. */
    EXTERNAL("external"),

    /** The nut. */
    INTERNAL("internal");

    private final String key;

    ThreadSide(String key) {
        this.key = key;
    }

    /** How it is written in plans and sums. */
    public String key() {
        return key;
    }
}
