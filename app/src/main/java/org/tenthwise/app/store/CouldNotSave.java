package org.tenthwise.app.store;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** An entry is not in the ledger. The message is for the person at the machine. */
public final class CouldNotSave extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        DISK_FULL,
        READ_ONLY,
        DAMAGED,
        /** The run holds entries of a newer release. */
        NEWER,
        /** The run was made in another store. */
        IMPORTED,
        BUSY,
        OTHER
    }

    private final Reason reason;

    public CouldNotSave(Reason reason, Message why, Throwable cause) {
        super(why, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
