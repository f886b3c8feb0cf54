package org.tenthwise.checklists.format;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as they stand in the text. The parsers hand out values only, in which {@code 1e3}, {@code 0x3E8} and
 * {@code 1_000} are no longer told from {@code 1000}.
 */
final class WrittenNumbers {

    private static final String KEY = "(?:[A-Za-z0-9_-]++|\"[^\"\\\\]*+(?:\\\\.[^\"\\\\]*+)*+\"|'[^']*+')";
    /**
     * Key or dotted key, equals sign, and what follows up to the end of the value; all of it absent for a list item.
     */
    private static final Pattern VALUE =
            Pattern.compile("(?:" + KEY + "(?:[ \\t]*\\.[ \\t]*" + KEY + ")*[ \\t]*=[ \\t]*)?([^,\\]}#\\s]+)");

    private final String text;
    private final List<Integer> lineStarts = new ArrayList<>();

    WrittenNumbers(String text) {
        this.text = text;
        lineStarts.add(0);
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            lineStarts.add(i + 1);
        }
    }

    /** The number whose key, or which itself, stands at {@code spot}, as written. */
    String at(Spot spot) {
        int offset = text.offsetByCodePoints(lineStarts.get(spot.line() - 1), spot.column() - 1);
        Matcher matcher = VALUE.matcher(text).region(offset, text.length());
        return matcher.lookingAt() ? matcher.group(1) : "";
    }
}
