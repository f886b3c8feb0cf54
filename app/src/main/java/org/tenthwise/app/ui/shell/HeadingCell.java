package org.tenthwise.app.ui.shell;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A small name over a value, and where there is room for it a quiet word behind the name or in its place. */
final class HeadingCell extends VBox {

    /** How the quiet word is told: the first is best. */
    enum Told {
        BEHIND_THE_NAME,
        IN_ITS_PLACE,
        NOT
    }

    private static final double BETWEEN = 12;

    private final Label name;
    private final Label value = label("", "middling", "bold");
    private final Label word = label("", "body");

    HeadingCell(String name, ObservableValue<String> value) {
        this.name = label(name, "body", "second");
        this.value.textProperty().bind(value);
        getChildren().addAll(new HBox(BETWEEN, this.name, word), this.value);
        setAlignment(Pos.CENTER_LEFT);
        tell(Told.NOT);
    }

    private static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setMinWidth(USE_PREF_SIZE);
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    void beside(ObservableValue<String> quiet) {
        word.textProperty().bind(quiet);
    }

    /** How wide it wants to be. */
    double wanted(Told told) {
        double upper = told == Told.IN_ITS_PLACE && !isSilent() ? word.prefWidth(-1) : name.prefWidth(-1);
        double behind = told == Told.BEHIND_THE_NAME && !isSilent() ? BETWEEN + word.prefWidth(-1) : 0;
        return Math.ceil(Math.max(upper + behind, value.prefWidth(-1)) + snappedLeftInset() + snappedRightInset());
    }

    private boolean isSilent() {
        return word.getText().isEmpty();
    }

    void tell(Told told) {
        name.setVisible(told != Told.IN_ITS_PLACE || isSilent());
        word.setVisible(told != Told.NOT && !isSilent());
    }
}
