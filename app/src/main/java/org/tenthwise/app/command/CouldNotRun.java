package org.tenthwise.app.command;

import java.util.List;
import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** A command could not do what it was asked to; why is for whoever typed it. */
final class CouldNotRun extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    CouldNotRun(Message why) {
        super(why);
    }

    CouldNotRun(Message why, Throwable cause) {
        super(why, cause);
    }

    /** Several things at once, a line each. */
    CouldNotRun(List<Message> lines) {
        this(lines.stream()
                .reduce((before, next) -> Message.of("command.line-after-line", before, next))
                .orElseThrow());
    }
}
