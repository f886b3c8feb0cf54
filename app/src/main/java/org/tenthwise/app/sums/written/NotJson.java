package org.tenthwise.app.sums.written;

/** A text is not the JSON object it should be. The message is one sentence for a person. */
public final class NotJson extends Exception {

    private static final long serialVersionUID = 1L;

    NotJson(String words) {
        super(words);
    }
}
