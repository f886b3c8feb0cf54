package org.tenthwise.model.compute.fit;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * How warm a part is and how it grows, and so what it measures where it lies.
 *
 * <p>L = L₂₀ · (1 + α · (t − 20)).
 *
 * <p>A length, exact. Warmer than 20 °C and with α above zero it is more than the size at 20 °C.
 *
 * <p>At 20 °C, or with α zero, the size is unchanged.
 *
 * <p>Source: ISO 1 for the reference temperature; linear expansion as in Swyt, Journal of Research of NIST 99 (1994).
 * Straight multiplication and not division by the growth of a gauge: both sizes are stated at 20 °C, no gauge comes in.
 *
 * @param celsius of the whole part, not below −273.15
 * @param perMillion expansion coefficient in 1e-6 per °C
 */
public record SizeAtTemperature(BigDecimal celsius, BigDecimal perMillion) {

    private static final BigDecimal REFERENCE = BigDecimal.valueOf(20);
    private static final BigDecimal HOT = BigDecimal.valueOf(50);
    private static final BigDecimal COLDEST = new BigDecimal("-273.15");

    public SizeAtTemperature {
        if (celsius.compareTo(COLDEST) < 0) {
            throw new Refused("model.size-at-temperature.temperature-c", celsius.toPlainString());
        }
    }

    /** At 20 °C, where nothing has grown. */
    public static SizeAtTemperature atReference() {
        return new SizeAtTemperature(REFERENCE, BigDecimal.ZERO);
    }

    /**
     * Whether bare hands should keep off: 50 °C and more, 0 °C and less. Common practice; local rules may be stricter.
     */
    public boolean burns() {
        return celsius.compareTo(HOT) >= 0 || celsius.signum() <= 0;
    }

    /** What a part of {@code at20} is now. */
    public Length now(Length at20) {
        BigDecimal growth = perMillion.multiply(celsius.subtract(REFERENCE)).movePointLeft(6);
        return at20.times(BigDecimal.ONE.add(growth));
    }
}
