package org.tenthwise.app.command;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** There is no display to open a window on. */
public final class NoDisplay extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    @Override
    public Message why() {
        return Message.of("command.no-display", CommandLines.PROGRAM);
    }

    @Override
    public String getMessage() {
        return why().toString();
    }
}
