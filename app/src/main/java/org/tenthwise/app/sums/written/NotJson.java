package org.tenthwise.app.sums.written;

import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** A text is not the JSON object it should be. */
public final class NotJson extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    NotJson(String key, Object... values) {
        this(Message.of(key, values));
    }

    NotJson(Message why) {
        this.why = why;
    }

    @Override
    public Message why() {
        return why;
    }

    /** In English; whoever shows it to a person lets the words of that person say {@link #why()}. */
    @Override
    public String getMessage() {
        return why.toString();
    }
}
