package org.tenthwise.model.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * The nominal size of an inch thread: {@code 1 1/2}, {@code 1-1/2}, {@code 3/8}, {@code 0.375}, {@code 2}, {@code #10}.
 */
final class InchSize {

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,2})(?: | ?- ?))?(\\d{1,3})/(\\d{1,3})");
    private static final Pattern DECIMAL = Pattern.compile("\\d{0,2}\\.\\d{1,5}");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,2}");
    private static final Pattern NUMBERED = Pattern.compile("(?:#|No\\.? ?)(\\d{1,2})", Pattern.CASE_INSENSITIVE);

    private static final int PLACES_OF_A_FRACTION = 20;

    /** ASME B1.1: size number n is 0.060 + 0.013 n inch. */
    private static final BigDecimal NUMBER_ZERO = new BigDecimal("0.060");

    private static final BigDecimal STEP_OF_A_NUMBER = new BigDecimal("0.013");
    private static final int HIGHEST_NUMBER = 12;

    private InchSize() {}

    /** @param listed whether a size goes with the pitch in the standard; tells size number 10 from ten inches */
    static Length read(String size, String text, Predicate<Length> listed) {
        Matcher fraction = FRACTION.matcher(size);
        Matcher numbered = NUMBERED.matcher(size);
        if (fraction.matches()) {
            return Length.of(fraction(fraction, text), Unit.INCH);
        }
        if (DECIMAL.matcher(size).matches()) {
            return Length.of(size, Unit.INCH);
        }
        if (numbered.matches() && Integer.parseInt(numbered.group(1)) <= HIGHEST_NUMBER) {
            return number(numbered.group(1));
        }
        if (WHOLE.matcher(size).matches()) {
            boolean isNumber = Integer.parseInt(size) <= HIGHEST_NUMBER
                    && listed.test(number(size))
                    && !listed.test(Length.of(size, Unit.INCH));
            return isNumber ? number(size) : Length.of(size, Unit.INCH);
        }
        throw new Refused("model.inch-size.begins-size", text, size);
    }

    /** Threads to the inch: a decimal, or a whole number and a fraction. */
    static BigDecimal count(String threads, String text) {
        Matcher fraction = FRACTION.matcher(threads);
        return fraction.matches() ? fraction(fraction, text) : new BigDecimal(threads);
    }

    private static BigDecimal fraction(Matcher read, String text) {
        BigDecimal below = new BigDecimal(read.group(3));
        if (below.signum() == 0) {
            throw new Refused("model.inch-size.fraction-over", text);
        }
        BigDecimal part = new BigDecimal(read.group(2)).divide(below, PLACES_OF_A_FRACTION, RoundingMode.HALF_EVEN);
        return read.group(1) == null ? part : part.add(new BigDecimal(read.group(1)));
    }

    private static Length number(String number) {
        return Length.of(NUMBER_ZERO.add(STEP_OF_A_NUMBER.multiply(new BigDecimal(number))), Unit.INCH);
    }
}
