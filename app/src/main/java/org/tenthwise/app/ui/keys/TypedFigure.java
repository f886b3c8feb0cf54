package org.tenthwise.app.ui.keys;

import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * What was typed for a figure, and what is wrong with it if it is none. Blanks round the figure are nothing, and so is
 * the unit of the plan behind it; anything else that does not belong there makes the whole no figure, since a figure
 * with a part left out is another figure.
 *
 * <p>An angle has its marks inside, see {@link Written#typed}.
 *
 * @param typed as it came
 * @param unit symbol of the unit figures are taken in; may be empty
 */
public record TypedFigure(String typed, String unit) {

    /** Most digits of a figure. */
    public static final int MOST_DIGITS = 10;

    /** A sign, or degrees, minutes or seconds that end in a point: nothing is missing but what follows. */
    private static final String BEGUN_ANGLE = "[+-]?(\\d{1,3}(°\\s*(\\d{1,2}['′]\\s*)?\\d{1,2})?\\.)?";

    /** Why it is no figure. */
    public enum Unfit {
        SECOND_POINT,
        OTHER_UNIT,
        BLANK_INSIDE,
        /** Decimals where degrees and minutes are read: 30.10 could be meant for ten minutes. */
        DEGREES_OR_MINUTES,
        NO_ANGLE,
        TOO_MANY_DIGITS,
        NO_NUMBER
    }

    /** Why it can be entered or not. */
    public KeypadViewModel.PadState state() {
        String figure = figure();
        if (figure.isEmpty()) {
            return KeypadViewModel.PadState.EMPTY;
        }
        if (isWritten(figure) && digits(figure) <= MOST_DIGITS) {
            return KeypadViewModel.PadState.ENTERABLE;
        }
        boolean begun = angle().isPresent()
                ? figure.matches(BEGUN_ANGLE)
                : withoutUnit(figure, unit.isEmpty() ? "" : unit.substring(0, unit.length() - 1))
                        .matches("[+-]?(\\d+(\\.\\d*)?)?");
        return begun && digits(figure) <= MOST_DIGITS
                ? KeypadViewModel.PadState.UNFINISHED
                : KeypadViewModel.PadState.NO_FIGURE;
    }

    /** The figure alone, where it is one; the marks of an angle are part of it. */
    public String figure() {
        return angle().isPresent() ? typed.strip() : withoutUnit(typed.strip(), unit);
    }

    /** What is wrong with it; empty where nothing is, or where it may still become a figure. */
    public Optional<Unfit> unfit() {
        if (state() != KeypadViewModel.PadState.NO_FIGURE) {
            return Optional.empty();
        }
        String figure = figure();
        if (figure.chars().filter(c -> c == '.').count() > 1) {
            return Optional.of(Unfit.SECOND_POINT);
        }
        if (figure.matches("[+-]?\\d+(\\.\\d+)?\\s*(mm|cm|m|in|inch|\"|°?[CF]|µm|um)")) {
            return Optional.of(Unfit.OTHER_UNIT);
        }
        if (figure.matches("[+\\-\\d.\\s]+") && figure.matches(".*\\s.*")) {
            return Optional.of(Unfit.BLANK_INSIDE);
        }
        if (angle().isPresent()) {
            return Optional.of(Written.isPlainDecimal(figure) ? Unfit.DEGREES_OR_MINUTES : Unfit.NO_ANGLE);
        }
        return Optional.of(digits(figure) > MOST_DIGITS ? Unfit.TOO_MANY_DIGITS : Unfit.NO_NUMBER);
    }

    /** The mark an angle goes on with: degrees, then minutes, then seconds; absent for what is no angle. */
    public Optional<String> nextMark() {
        return angle().map(of -> typed.matches(".*['′].*") ? "″" : typed.contains("°") ? "′" : "°");
    }

    private Optional<Unit> angle() {
        return Unit.ofSymbol(unit).filter(Unit::isOfAngle);
    }

    private boolean isWritten(String figure) {
        return angle().map(of -> Written.typed(figure, of).isPresent()).orElseGet(() -> Written.isPlainDecimal(figure));
    }

    private static String withoutUnit(String text, String symbol) {
        boolean behind = !symbol.isEmpty()
                && text.toLowerCase(Locale.ROOT).endsWith(symbol.toLowerCase(Locale.ROOT))
                && text.length() > symbol.length();
        return behind ? text.substring(0, text.length() - symbol.length()).strip() : text;
    }

    private static long digits(String text) {
        return text.chars().filter(c -> c >= '0' && c <= '9').count();
    }
}
