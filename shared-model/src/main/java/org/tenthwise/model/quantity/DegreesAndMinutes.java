package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Angles as they are written with marks: {@code 29°30′}, {@code 29°30′15.5″}. A sign stands for the whole; minutes and
 * seconds are less than 60, and the last of them may have decimals.
 */
final class DegreesAndMinutes {

    private static final String LAST = "(\\d{1,2}(?:\\.\\d{1,10})?)";
    private static final Pattern MARKED =
            Pattern.compile("([+-]?)(\\d{1,3})°(?:" + LAST + "′|(\\d{1,2})′" + LAST + "″)");
    private static final Pattern DECIMAL_DEGREES = Pattern.compile("([+-]?\\d{1,3}(?:\\.\\d{1,10})?)°");
    private static final BigDecimal SIXTY = new BigDecimal("60");
    private static final BigDecimal TEN = BigDecimal.TEN;

    private DegreesAndMinutes() {}

    /** The figure of a text with marks, in minutes or in seconds as its last mark says; absent for any other text. */
    static Optional<BigDecimal> figure(String text, Unit unit) {
        Matcher read = MARKED.matcher(text);
        if (!read.matches() || (read.group(3) != null) != (unit == Unit.MINUTE_OF_ARC)) {
            return Optional.empty();
        }
        BigDecimal minutes = new BigDecimal(read.group(3) != null ? read.group(3) : read.group(4));
        BigDecimal seconds = new BigDecimal(read.group(3) != null ? "0" : read.group(5));
        if (minutes.compareTo(SIXTY) >= 0 || seconds.compareTo(SIXTY) >= 0) {
            return Optional.empty();
        }
        BigDecimal inMinutes = new BigDecimal(read.group(2)).multiply(SIXTY).add(minutes);
        BigDecimal figure = unit == Unit.MINUTE_OF_ARC
                ? inMinutes
                : inMinutes.multiply(SIXTY).add(seconds);
        return Optional.of(read.group(1).equals("-") ? figure.negate() : figure);
    }

    /** What {@code figure} is written as, to the last zero: minutes and seconds have two figures before a point. */
    static String text(BigDecimal figure, Unit unit) {
        String sign = figure.signum() < 0 ? "-" : "";
        BigDecimal[] last = figure.abs().divideAndRemainder(SIXTY);
        String end = two(last[1].setScale(Math.max(0, figure.scale())));
        if (unit == Unit.MINUTE_OF_ARC) {
            return sign + whole(last[0]) + "°" + end + "′";
        }
        BigDecimal[] minutes = last[0].divideAndRemainder(SIXTY);
        return sign + whole(minutes[0]) + "°" + two(minutes[1].setScale(0)) + "′" + end + "″";
    }

    private static String whole(BigDecimal number) {
        return number.toBigInteger().toString();
    }

    private static String two(BigDecimal number) {
        return (number.compareTo(TEN) < 0 ? "0" : "") + number.toPlainString();
    }

    /**
     * An angle as somebody typed it. Marks of a keyboard serve as well, and the last one may be missing. Decimals of a
     * degree where minutes are expected must say so by a degree mark: 30.10 could be meant for ten minutes.
     */
    static Optional<Written> typed(String text, Unit expected) {
        String marked =
                text.replaceAll("['’]{2}|[\"”]", "″").replaceAll("['’]", "′").replaceAll("(?<=[°′])\\s+", "");
        if (Written.isPlainDecimal(marked)) {
            boolean clear = expected == Unit.DEGREE || new BigDecimal(marked).scale() == 0;
            return clear ? Optional.of(new Written(marked, Unit.DEGREE)) : Optional.empty();
        }
        Matcher decimal = DECIMAL_DEGREES.matcher(marked);
        if (decimal.matches()) {
            return Optional.of(new Written(decimal.group(1), Unit.DEGREE));
        }
        char last = marked.isEmpty() ? ' ' : marked.charAt(marked.length() - 1);
        String whole = !Character.isDigit(last) ? marked : marked + (marked.contains("′") ? "″" : "′");
        Unit unit = whole.endsWith("″") ? Unit.SECOND_OF_ARC : Unit.MINUTE_OF_ARC;
        return figure(whole, unit).map(read -> new Written(whole, unit));
    }
}
