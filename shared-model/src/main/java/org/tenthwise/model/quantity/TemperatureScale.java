package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * In which degrees a shop reads its thermometers. Sums are done in °C whatever the shop reads.
 *
 * <p>°C = (°F − 32) · 5/9, kept to a billionth of a degree, so that 68 °F is 20 °C exactly; expansion for a degree
 * Fahrenheit is 5/9 of that for a degree Celsius. Source: NIST Special Publication 811 (2008), B.8, factors for units,
 * from memory.
 */
public enum TemperatureScale {
    CELSIUS("C"),
    FAHRENHEIT("F");

    private static final BigDecimal FREEZING = new BigDecimal("32");
    private static final BigDecimal FIVE = new BigDecimal("5");
    private static final BigDecimal NINE = new BigDecimal("9");
    private static final int PLACES_OF_A_DEGREE = 9;
    /** What a figure that came back from °C is shown with: no thermometer and no table has more. */
    private static final int PLACES_SHOWN = 4;

    private final String key;

    TemperatureScale(String key) {
        this.key = key;
    }

    /** How plan files name it. */
    public String key() {
        return key;
    }

    public String symbol() {
        return "°" + key;
    }

    /** The reference temperature of ISO 1 in these degrees: 20 °C, 68 °F. */
    public Degrees reference() {
        return of(Celsius.REFERENCE);
    }

    /** A temperature in these degrees. */
    public Degrees of(Celsius temperature) {
        return new Degrees(
                this == CELSIUS
                        ? temperature.degrees()
                        : rounded(temperature
                                .degrees()
                                .multiply(NINE)
                                .divide(FIVE)
                                .add(FREEZING)),
                this);
    }

    /** @throws IllegalArgumentException if no size is taken at {@code degrees} of this scale */
    Celsius celsius(BigDecimal degrees) {
        return new Celsius(
                this == CELSIUS
                        ? degrees
                        : degrees.subtract(FREEZING)
                                .multiply(FIVE)
                                .divide(NINE, PLACES_OF_A_DEGREE, RoundingMode.HALF_EVEN)
                                .stripTrailingZeros());
    }

    /**
     * How much a material grows.
     *
     * @param millionths in 1e-6 per degree of this scale
     * @throws IllegalArgumentException if no material grows so
     */
    public Expansion expansion(BigDecimal millionths) {
        try {
            return new Expansion(
                    this == CELSIUS ? millionths : millionths.multiply(NINE).divide(FIVE));
        } catch (Refused e) {
            throw this == CELSIUS
                    ? e
                    : new Refused(Message.of("model.expansion.fahrenheit", millionths.toPlainString()), e);
        }
    }

    /** In 1e-6 per degree of this scale. */
    public BigDecimal perDegree(Expansion expansion) {
        return this == CELSIUS
                ? expansion.millionths()
                : rounded(
                        expansion.millionths().multiply(FIVE).divide(NINE, PLACES_OF_A_DEGREE, RoundingMode.HALF_EVEN));
    }

    private static BigDecimal rounded(BigDecimal figure) {
        BigDecimal shown = figure.setScale(PLACES_SHOWN, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return shown.scale() < 0 ? shown.setScale(0) : shown;
    }
}
