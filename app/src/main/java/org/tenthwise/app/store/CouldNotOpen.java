package org.tenthwise.app.store;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** A store was not opened, and nothing in it was changed. The message is for the person at the machine. */
public final class CouldNotOpen extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        NOT_FOUND,
        /** Some other file. */
        NOT_A_STORE,
        /** Made by a release newer than this one. */
        NEWER,
        HELD_BY_ANOTHER,
        READ_ONLY,
        DISK_FULL,
        DAMAGED,
        /** A store may be there, but the system does not let it be read, or kept safely. */
        UNREADABLE
    }

    private final Reason reason;

    public CouldNotOpen(Reason reason, Message why) {
        this(reason, why, null);
    }

    public CouldNotOpen(Reason reason, Message why, Throwable cause) {
        super(why, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
