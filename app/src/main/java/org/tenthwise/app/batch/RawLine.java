package org.tenthwise.app.batch;

import org.tenthwise.model.words.Message;

/** A line as it came in: its text, or why it has none. */
sealed interface RawLine {

    /** Without its end. */
    record Text(String text) implements RawLine {}

    record Unfit(Message why) implements RawLine {}
}
