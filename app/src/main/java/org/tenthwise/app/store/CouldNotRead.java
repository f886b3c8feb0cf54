package org.tenthwise.app.store;

/**
 * An open store was damaged or taken away, or holds what cannot be understood. The message is for the person at the
 * machine.
 */
public final class CouldNotRead extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public CouldNotRead(String message) {
        super(message);
    }

    public CouldNotRead(String message, Throwable cause) {
        super(message, cause);
    }
}
