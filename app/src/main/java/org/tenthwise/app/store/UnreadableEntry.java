package org.tenthwise.app.store;

/** The text of an entry cannot be understood. The message says why, without naming the entry. */
public final class UnreadableEntry extends Exception {

    private static final long serialVersionUID = 1L;

    UnreadableEntry(String message) {
        super(message);
    }

    UnreadableEntry(String message, Throwable cause) {
        super(message, cause);
    }
}
