package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Breaks what is to be read into lines. */
final class TextLines {

    private TextLines() {}

    /**
     * Puts pieces on lines, as many on one as fit; a piece that fits on no line is left out, and what would need more
     * lines than {@code most} as well.
     */
    static List<String> joined(List<String> pieces, String between, int most, Predicate<String> fits) {
        List<String> lines = new ArrayList<>();
        for (String piece : pieces) {
            int last = lines.size() - 1;
            if (last >= 0 && fits.test(lines.get(last) + between + piece)) {
                lines.set(last, lines.get(last) + between + piece);
            } else if (lines.size() < most && fits.test(piece)) {
                lines.add(piece);
            }
        }
        return lines;
    }
}
