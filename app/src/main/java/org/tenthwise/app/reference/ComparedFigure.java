package org.tenthwise.app.reference;

import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * One published figure or word and the one worked out.
 *
 * @param of the case it belongs to
 * @param key of the result
 * @param computed rounded to the places published, half-even, with more of them where it does not agree and would look
 *     alike; or why there is none
 * @param because why it is set aside, or how far it may be off; absent where there is nothing to say
 */
public record ComparedFigure(
        PublishedCase of,
        String key,
        String published,
        Message computed,
        Agreement agreement,
        Optional<Message> because) {

    /** Whether nothing but the digits printed was compared. */
    public boolean toTheLastDigit() {
        return agreement == Agreement.AGREES && !of.within().containsKey(key);
    }
}
