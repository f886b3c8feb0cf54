package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.app.picture.TextMetrics;

/** Breaks text into lines that fit: at blanks, and inside a word only where it is wider than a line. */
final class Wrapping {

    private record Lettered(String text, Style style) {}

    private final TextMetrics lettering;
    /** A table tries the same words in many widths. */
    private final Map<Lettered, Double> measured = new HashMap<>();

    Wrapping(TextMetrics lettering) {
        this.lettering = lettering;
    }

    /**
     * The lines of {@code text}, none for a blank one. Line ends in the text are kept, other white space is one blank.
     */
    List<String> lines(String text, Style style, double width) {
        List<String> lines = new ArrayList<>();
        text.strip().lines().forEach(paragraph -> wrap(paragraph, style, width, lines));
        return lines;
    }

    double width(String text, Style style) {
        return measured.computeIfAbsent(
                new Lettered(text, style), as -> lettering.width(as.text(), style.face(), style.size()));
    }

    /** What a column must have for no word of {@code text} to be broken. */
    double widestWord(String text, Style style) {
        return Arrays.stream(text.split("\\s+"))
                .mapToDouble(word -> width(word, style))
                .max()
                .orElse(0);
    }

    private void wrap(String paragraph, Style style, double width, List<String> lines) {
        String open = "";
        for (String word : paragraph.strip().split("\\s+")) {
            String longer = open.isEmpty() ? word : open + " " + word;
            if (width(longer, style) <= width) {
                open = longer;
            } else {
                if (!open.isEmpty()) {
                    lines.add(open);
                }
                open = breakUp(word, style, width, lines);
            }
        }
        if (!open.isEmpty()) {
            lines.add(open);
        }
    }

    /** Adds what of a long word fills whole lines and gives back its rest. */
    private String breakUp(String word, Style style, double width, List<String> lines) {
        StringBuilder open = new StringBuilder();
        for (int sign : word.codePoints().toArray()) {
            int before = open.length();
            open.appendCodePoint(sign);
            if (before > 0 && width(open.toString(), style) > width) {
                lines.add(open.substring(0, before));
                open.delete(0, before);
            }
        }
        return open.toString();
    }
}
