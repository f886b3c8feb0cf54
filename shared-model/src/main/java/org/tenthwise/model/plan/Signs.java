package org.tenthwise.model.plan;

import java.util.Optional;
import java.util.PrimitiveIterator;

/**
 * Signs that nobody sees and that change what is seen: control signs, signs that turn the direction of writing or take
 * no room, line and paragraph separators, halves of a sign. A name with one of them looks like another name, or breaks
 * the line it is printed in. The two joiners that some scripts are spelled with are no such signs.
 */
public final class Signs {

    private static final int JOINER = 0x200D;
    private static final int NON_JOINER = 0x200C;

    private Signs() {}

    /** The first of them in a name, as {@code U+202E}. */
    public static Optional<String> hiddenIn(String name) {
        return name.codePoints().filter(Signs::isHidden).mapToObj(Signs::named).findFirst();
    }

    /** As {@link #hiddenIn}, of a text that may stand on several lines and have tabs in it. */
    public static Optional<String> hiddenInProse(String text) {
        return text.codePoints()
                .filter(sign -> isHidden(sign) && sign != '\n' && sign != '\t')
                .mapToObj(Signs::named)
                .findFirst();
    }

    /** The text with each of them written out. */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        PrimitiveIterator.OfInt signs = text.codePoints().iterator();
        while (signs.hasNext()) {
            int sign = signs.nextInt();
            if (isHidden(sign)) {
                shown.append('<').append(named(sign)).append('>');
            } else {
                shown.appendCodePoint(sign);
            }
        }
        return shown.toString();
    }

    private static boolean isHidden(int sign) {
        return switch (Character.getType(sign)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            case Character.FORMAT -> sign != JOINER && sign != NON_JOINER;
            default -> false;
        };
    }

    private static String named(int sign) {
        return "U+%04X".formatted(sign);
    }
}
