package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.tenthwise.model.words.Refused;

/**
 * A length as it was written: on a drawing, in a plan, or typed from a gauge. {@code 35.010} stays {@code 35.010}.
 *
 * @param text a plain decimal: optional sign, digits, at most one point with digits after it
 * @param unit the unit it was written in
 */
public record Written(String text, Unit unit) {

    /** Ten figures before the point and ten after are more than any gauge shows. */
    private static final Pattern PLAIN_DECIMAL = Pattern.compile("[+-]?\\d{1,10}(\\.\\d{1,10})?");

    public Written {
        if (!isPlainDecimal(text)) {
            throw new Refused("model.written.plain-decimal", text);
        }
    }

    public static Written of(BigDecimal figure, Unit unit) {
        return new Written(figure.toPlainString(), unit);
    }

    /** Whether {@code text} could be written: no exponent, no group marks, no bare point. */
    public static boolean isPlainDecimal(String text) {
        return PLAIN_DECIMAL.matcher(text).matches();
    }

    public BigDecimal figure() {
        return new BigDecimal(text);
    }

    public Length length() {
        return Length.of(figure(), unit);
    }

    /** How many places stand after the point. */
    public int places() {
        return figure().scale();
    }

    @Override
    public String toString() {
        return text + " " + unit.symbol();
    }
}
