package org.tenthwise.model.plan;

import org.tenthwise.model.words.Word;

/** How the readings of a check become the one size that is judged. */
public enum Combine {

    /** Every reading must be inside; the one nearest to a limit, or furthest out, decides. */
    EACH,
    MEAN,
    LARGEST,
    SMALLEST,
    /** Largest less smallest. */
    RANGE;

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }
}
