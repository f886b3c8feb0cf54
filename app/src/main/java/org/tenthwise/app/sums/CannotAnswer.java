package org.tenthwise.app.sums;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Ends a sum in the middle; {@link Sums} turns it into a {@link Problem}. */
public final class CannotAnswer extends RuntimeException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    private CannotAnswer(Optional<String> key, Message why) {
        this.problem = new Problem(key, why);
    }

    /** @param why one sentence with the key and the value */
    public CannotAnswer(Input<?> input, Message why) {
        this(Optional.of(input.key()), why);
    }

    /** @param reason one of those there are words of for {@code input}, its gaps filled with {@code values} in order */
    public CannotAnswer(Input<?> input, String reason, Object... values) {
        this(input, input.said(reason, values));
    }

    /** @param why about the whole of what was given */
    public CannotAnswer(Message why) {
        this(Optional.empty(), why);
    }

    /**
     * What {@code asked} comes to; where the model refuses, a refusal about {@code input} in the {@code words} made of
     * the model's.
     */
    public static <T> T about(Input<?> input, UnaryOperator<Message> words, Supplier<T> asked) {
        try {
            return asked.get();
        } catch (IllegalArgumentException e) {
            throw new CannotAnswer(input, words.apply(Explained.why(e)));
        }
    }

    Problem problem() {
        return problem;
    }

    @Override
    public Message why() {
        return problem.why();
    }

    /** In English and with keys; whoever shows it to a person lets the words of that person say {@link #why()}. */
    @Override
    public String getMessage() {
        return why().toString();
    }
}
