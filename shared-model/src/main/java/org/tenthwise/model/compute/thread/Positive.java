package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/** A size that cannot be zero or less. */
final class Positive {

    private Positive() {}

    static Length size(String name, Length length) {
        if (length.signum() <= 0) {
            throw new Refused("model.positive.more-zero", name, length);
        }
        return length;
    }
}
