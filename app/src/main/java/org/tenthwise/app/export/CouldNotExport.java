package org.tenthwise.app.export;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** A record was not written. The message is for the person at the machine. */
public final class CouldNotExport extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        NOT_A_FOLDER,
        NOT_ALLOWED,
        DISK_FULL,
        OTHER
    }

    private final Reason reason;

    CouldNotExport(Reason reason, Message why, Throwable cause) {
        super(why, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
