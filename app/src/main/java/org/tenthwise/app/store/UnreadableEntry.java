package org.tenthwise.app.store;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** The text of an entry cannot be understood. The message says why, without naming the entry. */
public final class UnreadableEntry extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    UnreadableEntry(Message why) {
        super(why);
    }

    UnreadableEntry(Message why, Throwable cause) {
        super(why, cause);
    }
}
