package org.tenthwise.app.command;

import java.util.List;

/** A command could not do what it was asked to. The message is for whoever typed it. */
final class CouldNotRun extends Exception {

    private static final long serialVersionUID = 1L;

    CouldNotRun(String message) {
        super(message);
    }

    CouldNotRun(String message, Throwable cause) {
        super(message, cause);
    }

    /** Several things at once, a line each. */
    CouldNotRun(List<String> lines) {
        super(String.join("\n", lines));
    }
}
