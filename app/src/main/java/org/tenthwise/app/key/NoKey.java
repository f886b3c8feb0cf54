package org.tenthwise.app.key;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** There is no key to sign with. The message says why, and what to do. */
public final class NoKey extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    NoKey(Message why, Throwable cause) {
        super(why, cause);
    }

    /** Without anything behind it. */
    public NoKey(Message why) {
        this(why, null);
    }
}
