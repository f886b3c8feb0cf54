package org.tenthwise.app.store;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/**
 * An open store was damaged or taken away, or holds what cannot be understood. The message is for the person at the
 * machine.
 */
public final class CouldNotRead extends RuntimeException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    public CouldNotRead(Message why) {
        this(why, null);
    }

    public CouldNotRead(Message why, Throwable cause) {
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
