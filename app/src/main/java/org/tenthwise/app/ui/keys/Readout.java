package org.tenthwise.app.ui.keys;

import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.model.words.Words;

/**
 * The reading in hand: what is asked, the figure as typed with its unit, and a line that says what it comes to. What is
 * offered of the figure is paler than what was typed.
 */
public final class Readout extends VBox {

    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");
    private static final PseudoClass LONGER = PseudoClass.getPseudoClass("longer");
    private static final PseudoClass LONGEST = PseudoClass.getPseudoClass("longest");
    private static final PseudoClass WORDY = PseudoClass.getPseudoClass("wordy");
    private static final PseudoClass WORDIEST = PseudoClass.getPseudoClass("wordiest");
    /** More than this has no room beside its unit in large print. */
    private static final int SHORT = 6;

    private static final int QUITE_LONG = 7;
    private static final int VERY_LONG = 9;
    /** More of it below the figure is set smaller in large print. */
    private static final int LONG_LINE = 25;

    /** No figure is longer; what is may lose its beginning, so that the keys keep their places. */
    private static final int LONGEST_FIGURE = 13;
    /**
     * More than this wraps in large print: what is asked and the figure are then set smaller, so that both are whole.
     */
    private static final int ONE_LINE = 24;
    /**
     * More than this takes three lines in large print, two in small: the figure is then set smaller, clear of the keys
     * and with room for the line below.
     */
    private static final int TWO_LINES = 44;
    /** An angle has marks in it, and a figure of another unit says so: a second unit beside it would be wrong. */
    private static final Predicate<String> HAS_ITS_UNIT =
            Pattern.compile("[°\\p{L}]").asPredicate();

    private static final ObservableValue<String> NO_UNIT = new ReadOnlyStringWrapper("");

    /** A figure as it is shown: its sign and what is offered of it, where something is, and what was typed. */
    private record Parts(String sign, String offered, String typed) {

        static Parts of(String figure, String offered) {
            String shown = figure.replace('-', '\u2212');
            int from = shown.indexOf(offered);
            return offered.isEmpty() || from < 0
                    ? new Parts("", "", shown)
                    : new Parts(shown.substring(0, from), offered, shown.substring(from + offered.length()));
        }

        int length() {
            return sign.length() + offered.length() + typed.length();
        }
    }

    private final Label prompt = new Label();
    private final HBox row = new HBox(12);
    private final Label line = new Label();

    /** Without anything offered. */
    public Readout(
            ObservableValue<String> asked,
            ObservableValue<String> figure,
            ObservableValue<String> unit,
            ObservableValue<String> comesTo,
            Words words) {
        this(asked, figure, new ReadOnlyStringWrapper(""), unit, comesTo, words);
    }

    /** @param offered what of the figure is offered; empty for nothing */
    public Readout(
            ObservableValue<String> asked,
            ObservableValue<String> figure,
            ObservableValue<String> offered,
            ObservableValue<String> unit,
            ObservableValue<String> comesTo,
            Words words) {
        getStyleClass().add("readout");
        prompt.getStyleClass().addAll("body", "second");
        prompt.setId("prompt");
        prompt.setWrapText(true);
        prompt.setMinHeight(USE_PREF_SIZE);
        prompt.textProperty().bind(asked);
        prompt.textProperty().subscribe(text -> {
            pseudoClassStateChanged(WORDY, text.length() > ONE_LINE);
            pseudoClassStateChanged(WORDIEST, text.length() > TWO_LINES);
        });
        ObservableValue<Parts> parts =
                Bindings.createObjectBinding(() -> Parts.of(figure.getValue(), offered.getValue()), figure, offered);
        Label sign = part("reading-sign", parts.map(Parts::sign));
        Label front = part("reading-offered", parts.map(Parts::offered));
        front.getStyleClass().addAll("second", "offered");
        Label reading = part("reading", parts.map(Parts::typed));
        reading.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
        parts.subscribe(now -> {
            int length = now.length();
            reading.setMinWidth(length > LONGEST_FIGURE ? 0 : USE_PREF_SIZE);
            for (Label label : List.of(sign, front, reading)) {
                label.pseudoClassStateChanged(LONG, length > SHORT && length <= QUITE_LONG);
                label.pseudoClassStateChanged(LONGER, length > QUITE_LONG && length <= VERY_LONG);
                label.pseudoClassStateChanged(LONGEST, length > VERY_LONG);
            }
            reading.setAccessibleText(
                    now.offered().isEmpty()
                            ? now.typed()
                            : words.say("keypad.offered", now.sign() + now.offered(), now.typed()));
        });
        HBox digits = new HBox(sign, front, reading);
        digits.setAlignment(Pos.BASELINE_RIGHT);
        Label symbol = new Label();
        symbol.getStyleClass().addAll("middling", "second");
        symbol.setMinWidth(Label.USE_PREF_SIZE);
        symbol.setId("reading-unit");
        symbol.textProperty().bind(figure.flatMap(text -> HAS_ITS_UNIT.test(text) ? NO_UNIT : unit));
        row.getChildren().addAll(digits, symbol);
        row.setMinHeight(USE_PREF_SIZE);
        row.setAlignment(Pos.BASELINE_RIGHT);
        row.getStyleClass().add("lined-in-hand");
        VBox.setVgrow(row, Priority.ALWAYS);
        line.setId("comes-to");
        line.getStyleClass().addAll("body", "second");
        line.setWrapText(true);
        line.textProperty().subscribe(text -> line.pseudoClassStateChanged(LONGER, text.length() > LONG_LINE));
        line.textProperty().bind(comesTo);
        setSpacing(2);
        getChildren().addAll(prompt, row, line);
    }

    private static Label part(String id, ObservableValue<String> text) {
        Label label = new Label();
        label.setId(id);
        label.getStyleClass().add("reading");
        label.setMinWidth(USE_PREF_SIZE);
        label.textProperty().bind(text);
        label.managedProperty().bind(text.map(any -> !any.isEmpty() || id.equals("reading")));
        return label;
    }

    /** The line below gives way where there is no room for it; the figure stays where it is. */
    @Override
    protected void layoutChildren() {
        double width = getWidth() - getInsets().getLeft() - getInsets().getRight();
        double least = getInsets().getTop()
                + getInsets().getBottom()
                + prompt.prefHeight(width)
                + row.prefHeight(width)
                + line.prefHeight(width)
                + 2 * getSpacing();
        boolean room = !line.getText().isEmpty() && least <= getHeight() + 1;
        line.setVisible(room);
        line.setManaged(room);
        super.layoutChildren();
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }
}
