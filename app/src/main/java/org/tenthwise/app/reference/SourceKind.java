package org.tenthwise.app.reference;

import java.util.Arrays;
import java.util.Optional;
import org.tenthwise.model.words.Word;

/** Where the figures of a case come from. */
public enum SourceKind {

    /**
     * Read in the source named: in print, or in a collection, a chart or a page that hands on what is printed
     * elsewhere.
     */
    PUBLISHED,
    /** Recalled from the source named, and not seen again. */
    FROM_MEMORY,
    /** A habit of the trade. */
    COMMON_PRACTICE,
    /** Worked by hand from the formula of the source named. */
    CONSTRUCTED;

    /** As a file of cases and a table call it. */
    public String words() {
        return Word.spaced(this);
    }

    static Optional<SourceKind> of(String words) {
        return Arrays.stream(values())
                .filter(standing -> standing.words().equals(words))
                .findFirst();
    }
}
