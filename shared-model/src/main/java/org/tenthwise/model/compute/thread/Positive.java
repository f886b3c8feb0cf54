package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** A size that cannot be zero or less. */
final class Positive {

    private Positive() {}

    /** @param name what it is, by its text below {@code model.size} */
    static Length size(String name, Length length) {
        if (length.signum() <= 0) {
            throw new Refused("model.positive.more-zero", Message.of("model.size." + name), length);
        }
        return length;
    }
}
