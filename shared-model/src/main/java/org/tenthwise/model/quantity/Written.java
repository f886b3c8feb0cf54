package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tenthwise.model.words.Refused;

/**
 * A length, an angle or a figure of a scale as it was written: on a drawing, in a plan, or typed from a gauge.
 * {@code 35.010} stays {@code 35.010}.
 *
 * @param text a plain decimal: optional sign, digits, at most one point with digits after it; in minutes and seconds of
 *     arc with degrees and marks
 * @param unit the unit it was written in
 */
public record Written(String text, Unit unit) {

    /** Ten figures before the point and ten after are more than any gauge shows. */
    private static final Pattern PLAIN_DECIMAL = Pattern.compile("[+-]?\\d{1,10}(\\.\\d{1,10})?");

    public Written {
        if (!isWritten(text, unit)) {
            throw new Refused(unit.isOfAngle() ? "model.written.angle" : "model.written.plain-decimal", text);
        }
    }

    public static Written of(BigDecimal figure, Unit unit) {
        return new Written(unit.text(figure), unit);
    }

    /**
     * What somebody typed where a figure of {@code expected} was asked for; absent where it is none. An angle may be in
     * another of its units.
     */
    public static Optional<Written> typed(String text, Unit expected) {
        if (expected.isOfAngle()) {
            return DegreesAndMinutes.typed(text, expected);
        }
        return isPlainDecimal(text) ? Optional.of(new Written(text, expected)) : Optional.empty();
    }

    /** Whether {@code text} could be written: no exponent, no group marks, no bare point. */
    public static boolean isPlainDecimal(String text) {
        return PLAIN_DECIMAL.matcher(text).matches();
    }

    private static boolean isWritten(String text, Unit unit) {
        return unit.hasMarksInside() ? DegreesAndMinutes.figure(text, unit).isPresent() : isPlainDecimal(text);
    }

    public BigDecimal figure() {
        return unit.hasMarksInside() ? DegreesAndMinutes.figure(text, unit).orElseThrow() : new BigDecimal(text);
    }

    public Length length() {
        return Length.of(figure(), unit);
    }

    /** How many places stand after the point. */
    public int places() {
        return figure().scale();
    }

    /** The same in a finer unit of its kind. */
    public Written in(Unit finer) {
        return unit.equals(finer) ? this : of(length().in(finer), finer);
    }

    @Override
    public String toString() {
        return unit.behind(text);
    }
}
