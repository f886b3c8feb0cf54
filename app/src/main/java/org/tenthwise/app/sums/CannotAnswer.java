package org.tenthwise.app.sums;

import java.util.Optional;

/** Ends a sum in the middle; {@link Sums} turns it into a {@link Problem}. */
public final class CannotAnswer extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** @param words one sentence with the key and the value */
    public CannotAnswer(String key, String words) {
        super(words);
        this.problem = new Problem(Optional.of(key), words);
    }

    /** @param words about the whole of what was given */
    public CannotAnswer(String words) {
        super(words);
        this.problem = new Problem(Optional.empty(), words);
    }

    Problem problem() {
        return problem;
    }
}
