package org.tenthwise.app.sums;

import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.words.Message;

/**
 * Why a sum gives no answer, in words a person can act on.
 *
 * @param key what it is about; absent if it is about the whole
 * @param why one sentence with the key and the value
 */
public record Problem(Optional<String> key, Message why) implements SumReply {

    @Override
    public <T> T match(Function<SumResult, T> answered, Function<Problem, T> refused) {
        return refused.apply(this);
    }
}
