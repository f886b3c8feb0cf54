package org.tenthwise.app.store;

import java.util.Optional;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** A store was not made out of another, which is as it was. The message is for the person at the machine. */
public final class CouldNotCopy extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Reason {
        ALREADY_THERE,
        DISK_FULL,
        /** The folder is not there, was taken away, or takes no file. */
        NOT_WRITABLE
    }

    private final Reason reason;
    private final transient Message why;

    public CouldNotCopy(Reason reason, Message why, Optional<Exception> cause) {
        super(cause.orElse(null));
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
