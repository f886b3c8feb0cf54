package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.tolerance.Limit;

/** Which wrong size can still be cut, in the words of a plan. */
enum CutAgain {
    NO("no", Optional.empty()),
    TOO_SMALL("too small", Optional.of(Limit.LOWER)),
    TOO_BIG("too big", Optional.of(Limit.UPPER));

    private final String word;
    private final Optional<Limit> beyond;

    CutAgain(String word, Optional<Limit> beyond) {
        this.word = word;
        this.beyond = beyond;
    }

    String word() {
        return word;
    }

    /** The limit the size has passed. */
    Optional<Limit> beyond() {
        return beyond;
    }
}
