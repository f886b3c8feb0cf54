package org.tenthwise.app.command;

import java.util.List;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** A command could not do what it was asked to; why is for whoever typed it. */
final class CouldNotRun extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    CouldNotRun(Message why) {
        this(why, null);
    }

    CouldNotRun(Message why, Throwable cause) {
        super(cause);
        this.why = why;
    }

    /** Several things at once, a line each. */
    CouldNotRun(List<Message> lines) {
        this(lines.stream()
                .reduce((before, next) -> Message.of("command.line-after-line", before, next))
                .orElseThrow());
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
