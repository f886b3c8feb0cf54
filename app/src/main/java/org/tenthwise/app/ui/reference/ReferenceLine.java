package org.tenthwise.app.ui.reference;

import org.tenthwise.app.reference.Agreement;

/** A line of the list in hand. */
public sealed interface ReferenceLine {

    /**
     * A source that can be opened.
     *
     * @param counts how many figures of it agree, in words
     */
    record Source(String name, String counts, Runnable open) implements ReferenceLine {}

    /**
     * A figure published and the one worked out.
     *
     * @param name of the case
     * @param key what the result is called
     * @param word what {@code agreement} is called
     * @param because what there is to say about it; may be empty
     */
    record Figure(
            String name,
            String key,
            String published,
            String computed,
            Agreement agreement,
            String word,
            String because)
            implements ReferenceLine {}

    /**
     * Something said about a case.
     *
     * @param title source and case
     */
    record Said(String title, String words) implements ReferenceLine {}
}
