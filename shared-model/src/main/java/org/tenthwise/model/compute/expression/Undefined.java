package org.tenthwise.model.compute.expression;

import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** A step of an expression that has no answer; {@link Term} says of which part of it. */
final class Undefined extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String key;
    private final transient Object[] values;

    /** @param values fill the gaps behind the first, which is the part of the expression */
    Undefined(String key, Object... values) {
        super(key, null, false, false);
        this.key = key;
        this.values = values;
    }

    Refused of(String part) {
        Object[] all = new Object[values.length + 1];
        all[0] = part;
        System.arraycopy(values, 0, all, 1, values.length);
        return new Refused(Message.of(key, all));
    }
}
