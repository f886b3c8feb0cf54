package org.tenthwise.app.bundle;

import java.io.IOException;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Why a bundle cannot be made, where a file is being written. */
final class CannotBeMade extends IOException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    CannotBeMade(Message why) {
        this.why = why;
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
