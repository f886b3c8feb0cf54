package org.tenthwise.app.sums;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** Ends a sum in the middle; {@link Sums} turns it into a {@link Problem}. */
public final class CannotAnswer extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** @param words one sentence with the key and the value */
    public CannotAnswer(Input<?> input, String words) {
        super(words);
        this.problem = new Problem(Optional.of(input.key()), words);
    }

    /** @param words about the whole of what was given */
    public CannotAnswer(String words) {
        super(words);
        this.problem = new Problem(Optional.empty(), words);
    }

    /**
     * What {@code asked} comes to; where the model refuses, a refusal about {@code input} in the {@code words} made of
     * the model's.
     */
    public static <T> T about(Input<?> input, UnaryOperator<String> words, Supplier<T> asked) {
        try {
            return asked.get();
        } catch (IllegalArgumentException e) {
            throw new CannotAnswer(input, words.apply(e.getMessage()));
        }
    }

    Problem problem() {
        return problem;
    }
}
