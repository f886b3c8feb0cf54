package org.tenthwise.model.thread;

import java.util.Arrays;
import java.util.Optional;

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

    public static Optional<ThreadSide> ofKey(String key) {
        return Arrays.stream(values()).filter(side -> side.key.equals(key)).findFirst();
    }
}
