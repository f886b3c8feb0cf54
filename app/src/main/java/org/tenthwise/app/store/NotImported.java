package org.tenthwise.app.store;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** Runs of another store were not taken in, none of them, and nothing here was changed. */
public final class NotImported extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    public NotImported(Message why) {
        super(why);
    }

    public NotImported(Message why, Throwable cause) {
        super(why, cause);
    }
}
