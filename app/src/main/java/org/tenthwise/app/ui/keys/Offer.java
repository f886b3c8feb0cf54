package org.tenthwise.app.ui.keys;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.words.Message;

/**
 * What a pad puts to a figure typed on its keys, so that not all of it must be typed: whole units in front that are in
 * sight beforehand, or the point behind whole units that were typed. A point among the keys says that the figure is
 * typed in full; nothing is put to it then.
 *
 * <p>Behind a point that was not typed stand as many decimals as the gauge shows. One digit twice, or one missing,
 * would otherwise be another size near by; with the point typed it is one far off.
 *
 * @param front whole units with their point; empty for none
 * @param wholes whole units behind which the point comes by itself; none is the beginning of another
 * @param places decimals behind such a point, one or more
 * @param before the reading the front is of; absent for one that is of none
 */
public record Offer(String front, Set<String> wholes, int places, Optional<BigDecimal> before) {

    /** Every figure is typed in full. */
    public static final Offer NONE = new Offer("", Set.of(), 1, Optional.empty());

    /** Between limits with more whole units than these, a size may begin with nearly any digit. */
    private static final int MOST_WHOLES = 10;

    /** Readings of one place after the other on the same work differ by less; in the unit of the figure. */
    private static final BigDecimal NEAR = new BigDecimal("0.25");

    private static final String POINT = ".";

    public Offer {
        wholes = Set.copyOf(wholes);
    }

    /** The whole units that a size between two limits can have; none where one is the beginning of another. */
    public static Set<String> wholes(BigDecimal lower, BigDecimal upper) {
        BigInteger more = upper.toBigInteger().subtract(lower.toBigInteger());
        return more.compareTo(BigInteger.valueOf(MOST_WHOLES)) >= 0 ? Set.of() : allWholes(lower, upper);
    }

    /**
     * The point of a temperature that one decimal follows, as a thermometer shows it.
     *
     * @param coldest in the degrees that are typed, as {@code warmest}
     */
    public static Offer ofDegrees(BigDecimal coldest, BigDecimal warmest) {
        return new Offer("", allWholes(coldest, warmest), 1, Optional.empty());
    }

    private static Set<String> allWholes(BigDecimal lower, BigDecimal upper) {
        if (lower.signum() < 0) {
            return Set.of();
        }
        Set<String> wholes = Stream.iterate(lower.toBigInteger(), whole -> whole.add(BigInteger.ONE))
                .takeWhile(whole -> whole.compareTo(upper.toBigInteger()) <= 0)
                .map(BigInteger::toString)
                .collect(Collectors.toSet());
        boolean doubtful = wholes.stream()
                .anyMatch(whole -> wholes.stream().anyMatch(other -> other.startsWith(whole) && !other.equals(whole)));
        return doubtful ? Set.of() : wholes;
    }

    /** The same with nothing in front. */
    Offer withoutFront() {
        return new Offer("", wholes, places, Optional.empty());
    }

    /** The same with nothing in front that is of a reading. */
    Offer withoutReading() {
        return before.isPresent() ? withoutFront() : this;
    }

    /** @return the front, if it stands before what was typed */
    String frontOf(String keys) {
        return isAllDigits(digits(keys)) ? front : "";
    }

    /**
     * The whole figure.
     *
     * @param keys as they were pressed, the sign first; not empty
     */
    String figure(String keys) {
        String digits = digits(keys);
        String sign = keys.substring(0, keys.length() - digits.length());
        if (!isAllDigits(digits)) {
            return keys;
        }
        return sign + (front.isEmpty() ? inFull(digits, wholes.stream()).orElse(digits) : front + digits);
    }

    /** What speaks against what those keys come to; empty for a figure typed in full. */
    Optional<Message> against(String keys) {
        String figure = figure(keys);
        if (figure.equals(keys)) {
            return Optional.empty();
        }
        if (figure.length() - figure.indexOf(POINT) - 1 != places) {
            return Optional.of(Message.of("keypad.decimals", places));
        }
        return front.isEmpty() ? Optional.empty() : before.flatMap(read -> against(figure, digits(keys), read));
    }

    /**
     * Whole units go with the reading before only if the rest lies near it; else a size just over the next whole unit
     * would lose one, and one typed in full by habit would be read as decimals.
     */
    private Optional<Message> against(String figure, String digits, BigDecimal read) {
        BigDecimal off = off(figure, read);
        if (off.compareTo(NEAR) > 0) {
            return Optional.of(Message.of("keypad.far", read.toPlainString()));
        }
        if (wholesWithFront().contains(digits)) {
            return Optional.of(Message.of("keypad.either", figure, digits));
        }
        return inFull(digits, wholesWithFront().stream())
                .filter(other -> off(other, read).compareTo(off) < 0)
                .map(other -> Message.of("keypad.either", figure, other));
    }

    private static BigDecimal off(String figure, BigDecimal read) {
        return new BigDecimal(figure).subtract(read).abs();
    }

    private List<String> wholesWithFront() {
        return Stream.concat(wholes.stream(), Stream.of(front.substring(0, front.length() - POINT.length())))
                .distinct()
                .toList();
    }

    /** Those digits with the point behind the whole units they begin with; absent where nothing follows those. */
    private static Optional<String> inFull(String digits, Stream<String> wholes) {
        return wholes.filter(whole -> digits.startsWith(whole) && digits.length() > whole.length())
                .findFirst()
                .map(whole -> whole + POINT + digits.substring(whole.length()));
    }

    private static String digits(String keys) {
        return keys.startsWith("-") ? keys.substring(1) : keys;
    }

    private static boolean isAllDigits(String digits) {
        return digits.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
