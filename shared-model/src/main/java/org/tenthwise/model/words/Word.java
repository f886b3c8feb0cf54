package org.tenthwise.model.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The word for a choice, as files have it and texts are keyed by it: it does not change with the language. */
public final class Word {

    private Word() {}

    /** {@code cut-again} for {@code CUT_AGAIN}. */
    public static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As people write it where nothing need be one word: {@code cut again} for {@code CUT_AGAIN}. */
    public static String spaced(Enum<?> choice) {
        return of(choice).replace('-', ' ');
    }

    /** The choice that {@code word} stands for. */
    public static <E extends Enum<E>> Optional<E> find(Class<E> choices, String word) {
        return Arrays.stream(choices.getEnumConstants())
                .filter(choice -> of(choice).equals(word))
                .findFirst();
    }
}
