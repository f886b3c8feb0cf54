package org.tenthwise.model.worked;

import org.tenthwise.model.quantity.Written;

/**
 * Something known before anything is read, that the result hangs on.
 *
 * @param figure as the plan has it, with its unit where it has one
 */
public record Given(KnownSize what, String figure) {

    static Given of(KnownSize what, Written size) {
        return new Given(what, size.toString());
    }

    static Given of(KnownSize what, int number) {
        return new Given(what, String.valueOf(number));
    }
}
