package org.tenthwise.app.sums;

/** What was typed, fit to stand in a sentence: not longer than can be read, and without what would break a line. */
final class Quoted {

    private static final int MOST_CHARACTERS = 60;

    private Quoted() {}

    static String of(String text) {
        boolean tooLong = text.codePointCount(0, text.length()) > MOST_CHARACTERS;
        String start = tooLong ? text.substring(0, text.offsetByCodePoints(0, MOST_CHARACTERS)) : text;
        return start.replaceAll("\\p{Cntrl}", " ") + (tooLong ? "…" : "");
    }
}
