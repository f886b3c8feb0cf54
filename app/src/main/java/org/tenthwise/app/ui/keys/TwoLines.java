package org.tenthwise.app.ui.keys;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.theme.Elided;

/** A word and a smaller line under it, which gives way where it is empty or there is no room for it. */
final class TwoLines extends VBox {

    private final Label word;
    private final Label line;
    private final boolean elided;

    TwoLines(ObservableValue<String> word, ObservableValue<String> line) {
        this(word, label("key-line", line), false);
    }

    private TwoLines(ObservableValue<String> word, Label line, boolean elided) {
        this.elided = elided;
        this.word = label("key-word", word);
        this.line = line;
        setAlignment(Pos.CENTER);
        getChildren().addAll(this.word, this.line);
    }

    /** With as much of the line as the key is wide. */
    static TwoLines elided(ObservableValue<String> word, ObservableValue<String> line) {
        Elided shown = new Elided("key-line");
        line.subscribe(shown::show);
        return new TwoLines(word, shown, true);
    }

    /** Room is asked for the line too, also where it had to give way: there may be more the next time. */
    @Override
    protected double computePrefHeight(double width) {
        double inside = word.prefHeight(width) + (line.getText().isEmpty() ? 0 : line.prefHeight(width));
        return elided ? inside : super.computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double needed = word.prefHeight(getWidth()) + line.prefHeight(getWidth());
        boolean room = !line.getText().isEmpty() && Math.ceil(needed) <= getHeight();
        line.setVisible(room);
        line.setManaged(room);
        super.layoutChildren();
    }

    private static Label label(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.textProperty().bind(text);
        return label;
    }
}
