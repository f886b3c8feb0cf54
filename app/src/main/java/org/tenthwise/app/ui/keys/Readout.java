package org.tenthwise.app.ui.keys;

import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * The reading in hand: what is asked, the figure as typed with its unit, and a line that says what it comes to or why it
 * cannot be entered.
 */
public final class Readout extends VBox {

    private static final PseudoClass LONGER = PseudoClass.getPseudoClass("longer");
    private static final PseudoClass LONGEST = PseudoClass.getPseudoClass("longest");
    private static final int LONG = 7;
    private static final int VERY_LONG = 10;

    private final Label line = new Label();

    public Readout(ObservableValue<String> asked, ObservableValue<String> figure, ObservableValue<String> unit,
            ObservableValue<String> comesTo) {
        getStyleClass().add("readout");
        Label prompt = new Label();
        prompt.getStyleClass().addAll("body", "second");
        prompt.setWrapText(true);
        prompt.textProperty().bind(asked);
        Label reading = new Label();
        reading.setId("reading");
        reading.getStyleClass().add("reading");
        reading.setMinWidth(Label.USE_PREF_SIZE);
        reading.textProperty().bind(figure.map(text -> text.replace('-', '\u2212')));
        reading.textProperty().subscribe(text -> {
            reading.pseudoClassStateChanged(LONGER, text.length() > LONG && text.length() <= VERY_LONG);
            reading.pseudoClassStateChanged(LONGEST, text.length() > VERY_LONG);
        });
        Label symbol = new Label();
        symbol.getStyleClass().addAll("middling", "second");
        symbol.setMinWidth(Label.USE_PREF_SIZE);
        symbol.textProperty().bind(unit);
        HBox row = new HBox(12, reading, symbol);
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

    /** Whether the lowest line is shown; without it the readout is 32 px lower. */
    public void showLine(boolean shown) {
        line.setVisible(shown);
        line.setManaged(shown);
    }
}
