package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.words.Word;

/** Whether the part is read while it is held, or let go: thin walls give way to the jaws. */
public enum Clamping {
    CLAMPED,
    RELEASED;

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }

    public static Optional<Clamping> ofKey(String key) {
        return Word.find(Clamping.class, key);
    }
}
