package org.tenthwise.app.store;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** The text of an entry cannot be understood. The message says why, without naming the entry. */
public final class UnreadableEntry extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    UnreadableEntry(Message why) {
        this(why, null);
    }

    UnreadableEntry(Message why, Throwable cause) {
        super(cause);
        this.why = why;
    }

    @Override
    public Message why() {
        return why;
    }

    @Override
    public String getMessage() {
        return why.toString();
    }
}
