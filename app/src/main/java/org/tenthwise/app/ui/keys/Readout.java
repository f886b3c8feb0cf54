package org.tenthwise.app.ui.keys;

import java.util.function.Predicate;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The reading in hand: what is asked, the figure as typed with its unit, and a line that says what it comes to. */
public final class Readout extends VBox {

    private static final PseudoClass LONGER = PseudoClass.getPseudoClass("longer");
    private static final PseudoClass LONGEST = PseudoClass.getPseudoClass("longest");
    private static final PseudoClass WORDY = PseudoClass.getPseudoClass("wordy");
    private static final int LONG = 7;
    private static final int VERY_LONG = 9;
    /** No figure is longer; what is may lose its beginning, so that the keys keep their places. */
    private static final int LONGEST_FIGURE = 13;
    /**
     * More than this wraps in large print: what is asked and the figure are then set smaller, so that both are whole.
     */
    private static final int ONE_LINE = 24;
    /** An angle has marks in it, and a figure of another unit says so: a second unit beside it would be wrong. */
    private static final Predicate<String> HAS_ITS_UNIT =
            Pattern.compile("[°\\p{L}]").asPredicate();

    private static final ObservableValue<String> NO_UNIT = new ReadOnlyStringWrapper("");

    private final Label prompt = new Label();
    private final HBox row = new HBox(12);
    private final Label line = new Label();

    public Readout(
            ObservableValue<String> asked,
            ObservableValue<String> figure,
            ObservableValue<String> unit,
            ObservableValue<String> comesTo) {
        getStyleClass().add("readout");
        prompt.getStyleClass().addAll("body", "second");
        prompt.setId("prompt");
        prompt.setWrapText(true);
        prompt.setMinHeight(USE_PREF_SIZE);
        prompt.textProperty().bind(asked);
        prompt.textProperty().subscribe(text -> pseudoClassStateChanged(WORDY, text.length() > ONE_LINE));
        Label reading = new Label();
        reading.setId("reading");
        reading.getStyleClass().add("reading");
        reading.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
        reading.textProperty().bind(figure.map(text -> text.replace('-', '\u2212')));
        reading.textProperty().subscribe(text -> {
            reading.setMinWidth(text.length() > LONGEST_FIGURE ? 0 : USE_PREF_SIZE);
            reading.pseudoClassStateChanged(LONGER, text.length() > LONG && text.length() <= VERY_LONG);
            reading.pseudoClassStateChanged(LONGEST, text.length() > VERY_LONG);
        });
        Label symbol = new Label();
        symbol.getStyleClass().addAll("middling", "second");
        symbol.setMinWidth(Label.USE_PREF_SIZE);
        symbol.setId("reading-unit");
        symbol.textProperty().bind(figure.flatMap(text -> HAS_ITS_UNIT.test(text) ? NO_UNIT : unit));
        row.getChildren().addAll(reading, symbol);
        row.setMinHeight(USE_PREF_SIZE);
        row.setAlignment(Pos.BASELINE_RIGHT);
        row.getStyleClass().add("lined-in-hand");
        VBox.setVgrow(row, Priority.ALWAYS);
        line.setId("comes-to");
        line.getStyleClass().addAll("body", "second");
        line.setWrapText(true);
        line.textProperty().bind(comesTo);
        setSpacing(2);
        getChildren().addAll(prompt, row, line);
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
