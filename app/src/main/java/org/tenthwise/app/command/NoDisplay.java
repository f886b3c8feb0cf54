package org.tenthwise.app.command;

/** There is no display to open a window on. */
public final class NoDisplay extends Exception {

    private static final long serialVersionUID = 1L;

    public NoDisplay() {
        super(("There is no display to open the client on. \"%s demo\" works without one: it walks a demo part "
                                + "through the screens by ")
                        .formatted(CommandLines.PROGRAM)
                + "itself.");
    }
}
