package org.tenthwise.app.store;

/** An entry is not in the ledger. The message is for the person at the machine. */
public final class CouldNotSave extends Exception {

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

    public CouldNotSave(Reason reason, String message, Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
