package org.tenthwise.app.ui.keys;

import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;

/**
 * What was typed for a figure, and what is wrong with it if it is none. Blanks round the figure are nothing, and so is
 * the unit of the plan behind it; anything else that does not belong there makes the whole no figure, since a figure
 * with a part left out is another figure.
 *
 * @param typed as it came
 * @param unit symbol of the unit figures are taken in; may be empty
 */
public record TypedFigure(String typed, String unit) {

    /** Most digits of a figure. */
    public static final int MOST_DIGITS = 10;

    /** Why it is no figure. */
    public enum Unfit {
        SECOND_POINT,
        OTHER_UNIT,
        BLANK_INSIDE,
        TOO_MANY_DIGITS,
        NO_NUMBER
    }

    /** Why it can be entered or not. */
    public KeypadViewModel.PadState state() {
        String figure = figure();
        if (figure.isEmpty()) {
            return KeypadViewModel.PadState.EMPTY;
        }
        if (Written.isPlainDecimal(figure) && digits(figure) <= MOST_DIGITS) {
            return KeypadViewModel.PadState.ENTERABLE;
        }
        boolean begun = withoutUnit(figure, unit.isEmpty() ? "" : unit.substring(0, unit.length() - 1))
                .matches("[+-]?(\\d+(\\.\\d*)?)?");
        return begun && digits(figure) <= MOST_DIGITS
                ? KeypadViewModel.PadState.UNFINISHED
                : KeypadViewModel.PadState.NO_FIGURE;
    }

    /** The figure alone, where it is one. */
    public String figure() {
        return withoutUnit(typed.strip(), unit);
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
        return Optional.of(digits(figure) > MOST_DIGITS ? Unfit.TOO_MANY_DIGITS : Unfit.NO_NUMBER);
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
