package org.tenthwise.app.store;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** An entry is not in the ledger. The message is for the person at the machine. */
public final class CouldNotSave extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        DISK_FULL,
        READ_ONLY,
        DAMAGED,
        /** The run holds entries of a newer release. */
        NEWER,
        BUSY,
        OTHER
    }

    private final Reason reason;
    private final transient Message why;

    public CouldNotSave(Reason reason, Message why, Throwable cause) {
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
