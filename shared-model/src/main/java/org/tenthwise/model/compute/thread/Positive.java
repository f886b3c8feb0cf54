package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;

/** A size that cannot be nought or less. */
final class Positive {

    private Positive() {}

    static Length size(String name, Length length) {
        if (length.signum() <= 0) {
            throw new IllegalArgumentException("%s %s is not more than nought".formatted(name, length));
        }
        return length;
    }
}
