package org.tenthwise.model.words;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is to be said, in no language yet: a key of the texts and the values that fill its gaps.
 *
 * @param key which text
 * @param values by the name of the gap; a number fills a gap with its digits and a point, a {@link Message} as its
 *     sentence, a {@link Keyed} by its name, an enum by its name in small letters with hyphens, several as the list
 *     they are in these words, anything else as its own text
 */
public record Message(String key, Map<String, Object> values) {

    public Message {
        values = Map.copyOf(values);
    }

    /** The text of {@code key}, its gaps {@code {0}}, {@code {1}} … filled in order. */
    public static Message of(String key, Object... values) {
        Map<String, Object> numbered = new LinkedHashMap<>();
        for (int place = 0; place < values.length; place++) {
            numbered.put(String.valueOf(place), values[place]);
        }
        return new Message(key, numbered);
    }

    /** The text of {@code stem} and the value's name, as {@link Words#say(String, Enum)} has it. */
    public static Message ofValue(String stem, Enum<?> value, Object... values) {
        return of(Words.keyOf(stem, value), values);
    }

    /** This with the gap {@code {name}} filled. */
    public Message with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(name, value);
        return new Message(key, more);
    }

    /** This and, behind a blank, {@code next}: two sentences. */
    public Message and(Message next) {
        return of("one-after-another", this, next);
    }

    /** In English and with keys, for a log or a test; whoever shows it asks {@link Words}. */
    @Override
    public String toString() {
        return Words.ENGLISH.byKey().say(this);
    }
}
