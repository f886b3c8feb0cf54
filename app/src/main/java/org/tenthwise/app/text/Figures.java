package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Predicate;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * Lengths, angles and figures of scales, to read. Rounded half-up to the places asked for, but never so that a size
 * seems to lie on a limit or on its other side when it does not: places are added until it reads as it is. The minus is
 * the sign, not the hyphen.
 */
public final class Figures {

    private static final String MINUS = "\u2212";
    /** Beyond this an inch that came from millimetres is not exact any more, see {@link Length#in}. */
    private static final int MOST_PLACES = 12;

    private Figures() {}

    /**
     * {@code length} in {@code unit} with {@code places} after the point; a length that is not zero never reads as
     * zero.
     */
    public static String plain(Length length, Unit unit, int places) {
        return beside(List.of(length.zero()), length, unit, places);
    }

    /** A length to be read beside others, its limits above all. */
    public static String beside(List<Length> neighbours, Length length, Unit unit, int places) {
        return number(length.in(unit).setScale(places(neighbours, length, unit, places), RoundingMode.HALF_UP), unit);
    }

    /** With a plus where it is more than zero. */
    public static String signed(Length length, Unit unit, int places) {
        return (length.signum() > 0 ? "+" : "") + plain(length, unit, places);
    }

    /** As it was written, to the last zero. */
    public static String written(Written written) {
        return sign(marked(written.text(), written.unit()));
    }

    /** The same with its unit. */
    public static String withUnit(Written written) {
        return withUnit(written(written), written.unit());
    }

    /** A figure with its unit; that of an angle or a scale has it already. */
    public static String withUnit(String figure, Unit unit) {
        return unit.isOfLength() ? figure + " " + unit.symbol() : figure;
    }

    /** A reading as it was typed, among figures of {@code unit}: one in the other unit says so. */
    public static String read(Written typed, Unit unit) {
        return typed.unit().equals(unit) ? written(typed) : withUnit(typed);
    }

    /** A figure in that unit. */
    public static String number(BigDecimal figure, Unit unit) {
        return sign(marked(unit.text(figure), unit));
    }

    /** A length among others of its unit goes without it; an angle never does, nor a figure of a scale. */
    private static String marked(String figure, Unit unit) {
        return unit.isOfLength() ? figure : unit.behind(figure);
    }

    /** Any other plain number. */
    public static String number(BigDecimal number) {
        return sign(number.toPlainString());
    }

    /** How many places a length is shown with beside others, where {@code places} are asked for. */
    static int places(List<Length> neighbours, Length length, Unit unit, int places) {
        BigDecimal exact = length.in(unit);
        int shown = places;
        while (shown < MOST_PLACES && neighbours.stream().anyMatch(crossed(exact, unit, shown))) {
            shown++;
        }
        return shown;
    }

    private static Predicate<Length> crossed(BigDecimal exact, Unit unit, int places) {
        BigDecimal rounded = exact.setScale(places, RoundingMode.HALF_UP);
        return neighbour -> rounded.compareTo(neighbour.in(unit)) != exact.compareTo(neighbour.in(unit));
    }

    private static String sign(String plain) {
        return plain.startsWith("-") ? MINUS + plain.substring(1) : plain;
    }
}
