package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import org.tenthwise.model.words.Refused;

/**
 * How much a material grows with heat: its coefficient of linear thermal expansion.
 *
 * @param millionths in 1e-6 per °C, from −20 to 300; zero for what does not grow
 */
public record Expansion(BigDecimal millionths) {

    private static final BigDecimal LEAST = new BigDecimal("-20");
    private static final BigDecimal MOST = new BigDecimal("300");
    /** No glass ceramic is steadier than this: whoever writes less has written the coefficient without its 1e-6. */
    private static final BigDecimal STEADIEST = new BigDecimal("0.001");

    private static final int MILLIONTH = 6;

    public Expansion {
        if (millionths.compareTo(LEAST) < 0 || millionths.compareTo(MOST) > 0) {
            throw new Refused(
                    "model.expansion.expansion-e",
                    millionths.toPlainString(),
                    LEAST.toPlainString(),
                    MOST.toPlainString());
        }
        if (millionths.signum() != 0 && millionths.abs().compareTo(STEADIEST) < 0) {
            throw new Refused("model.expansion.expansion-too", millionths.toPlainString());
        }
    }

    /** @throws NumberFormatException if {@code millionths} is not a decimal number */
    public static Expansion of(String millionths) {
        return new Expansion(new BigDecimal(millionths));
    }

    /** What a length at 20 °C is multiplied by to have the length at {@code temperature}: 1 + α·(t − 20), exactly. */
    public BigDecimal growth(Celsius temperature) {
        return BigDecimal.ONE.add(millionths.movePointLeft(MILLIONTH).multiply(temperature.aboveReference()));
    }

    @Override
    public String toString() {
        return millionths.toPlainString() + "e-6 per °C";
    }
}
