package org.tenthwise.model.callout;

import java.util.Locale;

/**
 * A piece of a callout.
 *
 * @param text as it stands in the tidied text
 * @param start where it begins there
 * @param blankBefore whether a blank, a line break or the beginning is before it
 * @param blankAfter whether a blank, a line break or the end is behind it
 */
record Token(Type type, String text, int start, int end, boolean blankBefore, boolean blankAfter) {

    enum Type {
        FIGURE,
        WORD,
        SIGN,
        BREAK,
        END
    }

    boolean is(char sign) {
        return type == Type.SIGN && text.charAt(0) == sign;
    }

    boolean isFigure() {
        return type == Type.FIGURE;
    }

    boolean isWord() {
        return type == Type.WORD;
    }

    boolean isWord(String... any) {
        if (type == Type.WORD) {
            for (String word : any) {
                if (word.equals(capitals())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Digits alone. */
    boolean isWhole() {
        return isFigure() && text.chars().allMatch(Character::isDigit);
    }

    /** In capitals, without the stop of an abbreviation. */
    String capitals() {
        String plain = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        return plain.toUpperCase(Locale.ROOT);
    }
}
