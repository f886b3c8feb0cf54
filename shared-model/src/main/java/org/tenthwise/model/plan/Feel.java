package org.tenthwise.model.plan;

import java.util.Arrays;
import java.util.Optional;

/** What the hand must find when a plug is offered to its bore. */
public enum Feel {

    FREELY("freely", Answer.FREELY), WITH_DRAG("with-drag", Answer.WITH_DRAG), NOT_AT_ALL("not-at-all", Answer.NOT_AT_ALL);

    private final String key;
    private final Answer answer;

    Feel(String key, Answer answer) {
        this.key = key;
        this.answer = answer;
    }

    /** How plan files name it. */
    public String key() {
        return key;
    }

    public Answer answer() {
        return answer;
    }

    public static Optional<Feel> ofKey(String key) {
        return Arrays.stream(values()).filter(feel -> feel.key.equals(key)).findFirst();
    }
}
