package org.tenthwise.app.export;

import java.util.Locale;

/** The words for choices in files that programs read; they do not change with the language of the screen. */
final class Codes {

    private Codes() {}

    /** {@code cut-again} for {@code CUT_AGAIN}. */
    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
