package org.tenthwise.app.bundle;

import org.tenthwise.model.words.ExplainedFailure;
import org.tenthwise.model.words.Message;

/** A file is no bundle, or not as it was made. The message names the first thing that is wrong. */
public final class NotABundle extends ExplainedFailure {

    private static final long serialVersionUID = 1L;

    private final boolean another;

    private NotABundle(Message why, boolean another) {
        super(why, null);
        this.another = another;
    }

    static NotABundle because(String key, Object... values) {
        return new NotABundle(Message.of(key, values), false);
    }

    /** Of a file that does not even begin as a bundle does. */
    static NotABundle somethingElse() {
        return new NotABundle(Message.of("bundle.something-else"), true);
    }

    /** Whether the file is of another kind altogether. */
    public boolean isSomethingElse() {
        return another;
    }
}
