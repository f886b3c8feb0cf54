package org.tenthwise.model.thread;

import org.tenthwise.model.words.Word;

/** Which of the two parts of a thread. */
public enum ThreadSide {

    /** The screw. */
    EXTERNAL,

    /** The nut. */
    INTERNAL;

    /** How it is written in plans and sums. */
    public String key() {
        return Word.of(this);
    }
}
