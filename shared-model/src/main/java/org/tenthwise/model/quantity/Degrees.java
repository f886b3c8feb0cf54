package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * A temperature as it was read or written, with its zeros and in its degrees.
 *
 * @param figure what {@link Celsius} takes, once brought to °C
 */
public record Degrees(BigDecimal figure, TemperatureScale scale) {

    public Degrees {
        try {
            scale.celsius(figure);
        } catch (IllegalArgumentException e) {
            throw new Refused(Message.of("model.degrees.temperature-size", figure.toPlainString(), scale.symbol()), e);
        }
    }

    /** @throws NumberFormatException if {@code figure} is not a decimal number */
    public static Degrees of(String figure, TemperatureScale scale) {
        return new Degrees(new BigDecimal(figure), scale);
    }

    public Celsius celsius() {
        return scale.celsius(figure);
    }

    /** How many places stand after the point. */
    public int places() {
        return figure.scale();
    }

    /** The figure alone. */
    public String text() {
        return figure.toPlainString();
    }

    @Override
    public String toString() {
        return text() + " " + scale.symbol();
    }
}
