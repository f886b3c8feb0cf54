package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Supplier;
import org.tenthwise.model.words.Message;

/** Reads a decimal as it was typed; nothing goes through a binary fraction. */
final class DecimalText {

    /** Longer than any gauge, any drawing and any certified data set, short enough for exact sums. */
    private static final int MOST_CHARACTERS = 60;

    private static final int MOST_MAGNITUDE = 30;
    private static final String OF_A_NUMBER = "0123456789.+-eE";

    private DecimalText() {}

    /**
     * @param input what is read
     * @param place the key, with the item where it is in a list
     * @throws CannotAnswer if {@code text} is no decimal number, or one no sum of the shop could mean
     */
    static BigDecimal read(Input<?> input, Supplier<Message> place, String text) {
        BigDecimal figure = decimal(text)
                .orElseThrow(
                        () -> new CannotAnswer(input, Message.of("given.no-decimal", place.get(), Quoted.of(text))));
        if (Math.abs((long) figure.precision() - figure.scale()) > MOST_MAGNITUDE
                || figure.scale() > MOST_MAGNITUDE * 2) {
            throw new CannotAnswer(input, Message.of("given.out-of-range", place.get(), text));
        }
        return figure;
    }

    static boolean isOne(String text) {
        return decimal(text).isPresent();
    }

    /** Absent where it is no number; figures of other scripts are none. */
    private static Optional<BigDecimal> decimal(String text) {
        if (text.length() > MOST_CHARACTERS) {
            return Optional.empty();
        }
        for (int i = 0; i < text.length(); i++) {
            if (OF_A_NUMBER.indexOf(text.charAt(i)) < 0) {
                return Optional.empty();
            }
        }
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
