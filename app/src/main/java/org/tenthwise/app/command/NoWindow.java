package org.tenthwise.app.command;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Why no window can be opened here. */
public final class NoWindow extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    private NoWindow(Message why) {
        this.why = why;
    }

    private NoWindow(Message why, Throwable cause) {
        super(cause);
        this.why = why;
    }

    /** There is nothing to show one on. */
    public static NoWindow noDisplay() {
        return new NoWindow(Message.of("command.no-display", CommandLines.PROGRAM));
    }

    /**
     * By what JavaFX says where it cannot start. On Linux it looks for the display first; then it loads GTK 3, which
     * draws its windows there, and libraries which that needs.
     */
    public static NoWindow because(Throwable said) {
        String what = String.valueOf(said.getMessage()).replaceAll("\\s+", " ").strip();
        if (what.contains("DISPLAY")) {
            return noDisplay();
        }
        boolean library = said instanceof LinkageError || what.contains("GTK");
        return new NoWindow(
                Message.of(library ? "command.no-library" : "command.no-window", CommandLines.PROGRAM, what), said);
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
