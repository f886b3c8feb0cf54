package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.Optional;

/** Reads a decimal as it was typed; nothing goes through a binary fraction. */
final class DecimalText {

    /** Longer than any gauge, any drawing and any certified data set, short enough for exact sums. */
    private static final int MOST_CHARACTERS = 60;

    private static final int MOST_MAGNITUDE = 30;
    private static final String OF_A_NUMBER = "0123456789.+-eE";

    private DecimalText() {}

    /**
     * @param place the key, with the item where it is in a list, as the sentence of a refusal begins
     * @throws CannotAnswer if {@code text} is no decimal number, or one no sum of the shop could mean
     */
    static BigDecimal read(String key, String place, String text) {
        BigDecimal figure = decimal(text)
                .orElseThrow(() -> new CannotAnswer(
                        key, "%s is \"%s\": it is not a decimal number".formatted(place, Quoted.of(text))));
        if (Math.abs((long) figure.precision() - figure.scale()) > MOST_MAGNITUDE
                || figure.scale() > MOST_MAGNITUDE * 2) {
            throw new CannotAnswer(key, "%s is %s: it is out of any range a shop measures in".formatted(place, text));
        }
        return figure;
    }

    static boolean isOne(String text) {
        return decimal(text).isPresent();
    }

    /** Absent where it is no number; figures of other scripts are none. */
    private static Optional<BigDecimal> decimal(String text) {
        if (text.length() > MOST_CHARACTERS
                || !text.chars().allMatch(character -> OF_A_NUMBER.indexOf(character) >= 0)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
