package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads a decimal as it was typed; nothing goes through a binary fraction. */
final class Figure {

    /** Longer than any gauge, any drawing and any certified data set, short enough for exact sums. */
    private static final int MOST_CHARACTERS = 60;
    private static final int MOST_MAGNITUDE = 30;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private Figure() {
    }

    /** @throws CannotAnswer if {@code text} is no decimal number, or one no sum of the shop could mean */
    static BigDecimal read(String key, String text) {
        if (text.length() > MOST_CHARACTERS || !NUMBER.matcher(text).matches()) {
            throw new CannotAnswer(key, "%s is \"%s\": it is not a decimal number".formatted(key, Quoted.of(text)));
        }
        BigDecimal figure = new BigDecimal(text);
        if (Math.abs((long) figure.precision() - figure.scale()) > MOST_MAGNITUDE || figure.scale() > MOST_MAGNITUDE * 2) {
            throw new CannotAnswer(key, "%s is %s: it is out of any range a shop measures in".formatted(key, text));
        }
        return figure;
    }
}
