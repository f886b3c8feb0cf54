package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/**
 * Puts the figures of an answer into the figures and words a person reads: to as many places as a gauge of the shop
 * shows, and then a figure that is not all of it says so by the sign before it; or with all that a sum answers to, a
 * nanometre.
 */
public final class AnswerFormat {

    static final String ROUNDED = "≈";

    private static final int LEAST_PLACES_MM = 3;
    private static final int MOST_PLACES_MM = 4;
    private static final int ALL_PLACES_MM = 6;
    private static final int LEAST_PLACES_INCH = 4;
    private static final int MOST_PLACES_INCH = 5;
    private static final int ALL_PLACES_INCH = 8;
    private static final int FINEST = 12;
    private static final int PLACES_OF_A_CONVERSION = 3;
    private static final int PLACES_OF_AN_ANGLE = 2;
    private static final int ALL_PLACES_OF_AN_ANGLE = 4;

    private final Words words;
    private final Unit unit;
    private final boolean all;

    /** @param all whether every decimal is shown */
    public AnswerFormat(Words words, Unit unit, boolean all) {
        this.words = words;
        this.unit = unit;
        this.all = all;
    }

    Unit unit() {
        return unit;
    }

    public Words words() {
        return words;
    }

    /** The same with every decimal, for a figure that is typed on as it stands. */
    AnswerFormat whole() {
        return new AnswerFormat(words, unit, true);
    }

    /** A length, zeros at the end left out as far as is usual. */
    public String length(Length length) {
        return length(length, RoundingMode.HALF_UP);
    }

    /** @param way down for what may be no more, up for what may be no less */
    String length(Length length, RoundingMode way) {
        int least = unit == Unit.INCH ? LEAST_PLACES_INCH : LEAST_PLACES_MM;
        int most = all
                ? unit == Unit.INCH ? ALL_PLACES_INCH : ALL_PLACES_MM
                : unit == Unit.INCH ? MOST_PLACES_INCH : MOST_PLACES_MM;
        return figure(length.in(unit), least, most, way);
    }

    /** A figure typed in the other unit: a thousandth of its last place is not seen any more. */
    static String typed(Length exact, Unit shown, BigDecimal typed) {
        int least = shown == Unit.INCH ? LEAST_PLACES_INCH : LEAST_PLACES_MM;
        int most = Math.min(FINEST, Math.max(least, typed.scale() + PLACES_OF_A_CONVERSION));
        return marked(exact.in(shown), least, most, RoundingMode.HALF_UP, true);
    }

    private String figure(BigDecimal exact, int least, int most, RoundingMode way) {
        return marked(exact, least, most, way, !all);
    }

    /** To {@code most} places, but never so that what is something reads as nothing. */
    private static String marked(BigDecimal exact, int least, int most, RoundingMode way, boolean marks) {
        int places = most;
        BigDecimal rounded = exact.setScale(places, way);
        while (rounded.signum() == 0 && exact.signum() != 0 && places < FINEST) {
            places++;
            rounded = exact.setScale(places, way);
        }
        int shown = Math.max(least, rounded.stripTrailingZeros().scale());
        String read = Figures.number(rounded.setScale(shown, RoundingMode.UNNECESSARY));
        return !marks || rounded.compareTo(exact) == 0 ? read : ROUNDED + read;
    }

    /**
     * A figure that is no length, without zeros at its end.
     *
     * @param signed whether a plus is shown as well
     */
    String figure(BigDecimal exact, boolean signed) {
        String read = figure(exact, 0, all ? ALL_PLACES_INCH : LEAST_PLACES_INCH, RoundingMode.HALF_UP);
        return signed && exact.signum() > 0 ? plus(read) : read;
    }

    /** A depth, without zeros at its end. */
    String depth(Length length, RoundingMode way) {
        return figure(length.in(unit), 0, all ? ALL_PLACES_INCH : LEAST_PLACES_INCH, way);
    }

    public String signed(Length length) {
        return signed(length, RoundingMode.HALF_UP);
    }

    String signed(Length length, RoundingMode way) {
        String read = length(length, way);
        return length.signum() <= 0 ? read : plus(read);
    }

    private static String plus(String read) {
        return read.startsWith(ROUNDED) ? ROUNDED + "+" + read.substring(ROUNDED.length()) : "+" + read;
    }

    String withUnit(String figures) {
        return figures + " " + unit.symbol();
    }

    /** @param places what is known of it at the most; absent where that is as for any angle */
    String angle(BigDecimal degrees, Optional<Integer> places) {
        int most = all ? ALL_PLACES_OF_AN_ANGLE : places.orElse(PLACES_OF_AN_ANGLE);
        BigDecimal rounded = degrees.setScale(most, RoundingMode.HALF_UP);
        BigDecimal shown = rounded.remainder(Angle.FULL_TURN).stripTrailingZeros();
        String read = Figures.number(shown.setScale(Math.max(0, shown.scale())));
        return all || rounded.compareTo(degrees) == 0 ? read : ROUNDED + read;
    }

    /** A picture said: whose it is, and the length at its line. */
    String spoken(BenchKind kind, String figures) {
        return words.say("bench.picture.sketch", words.say("bench.name", kind), figures);
    }

    SizePicture.Sized sized(Length length) {
        return sized(length, RoundingMode.HALF_UP);
    }

    SizePicture.Sized sized(Length length, RoundingMode way) {
        return new SizePicture.Sized(length, length(length, way));
    }

    /** A size that may be no more. */
    SizePicture.Sized greatest(Length length) {
        return sized(length, RoundingMode.FLOOR);
    }

    /** A size that may be no less. */
    SizePicture.Sized least(Length length) {
        return sized(length, RoundingMode.CEILING);
    }
}
