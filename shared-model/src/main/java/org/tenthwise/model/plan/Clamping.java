package org.tenthwise.model.plan;

import java.util.Arrays;
import java.util.Optional;

/** Whether the part is read while it is held, or let go: thin walls give way to the jaws. */
public enum Clamping {
    CLAMPED("clamped"),
    RELEASED("released");

    private final String key;

    Clamping(String key) {
        this.key = key;
    }

    /** How plan files name it. */
    public String key() {
        return key;
    }

    public static Optional<Clamping> ofKey(String key) {
        return Arrays.stream(values())
                .filter(clamping -> clamping.key.equals(key))
                .findFirst();
    }
}
