package org.tenthwise.app.store;

import java.util.Optional;
import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** A store was not made out of another, which is as it was. The message is for the person at the machine. */
public final class CouldNotCopy extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        ALREADY_THERE,
        DISK_FULL,
        /** The folder is not there, was taken away, or takes no file. */
        NOT_WRITABLE
    }

    private final Reason reason;

    public CouldNotCopy(Reason reason, Message why, Optional<Exception> cause) {
        super(why, cause.orElse(null));
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
