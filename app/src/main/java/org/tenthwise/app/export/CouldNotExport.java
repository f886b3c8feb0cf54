package org.tenthwise.app.export;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** A record was not written. The message is for the person at the machine. */
public final class CouldNotExport extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        NOT_A_FOLDER,
        NOT_ALLOWED,
        DISK_FULL,
        OTHER
    }

    private final Reason reason;
    private final transient Message why;

    CouldNotExport(Reason reason, Message why, Throwable cause) {
        super(cause);
        this.reason = reason;
        this.why = why;
    }

    public Reason reason() {
        return reason;
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
