package org.tenthwise.app.ui.shell;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.theme.Texts;

/** A small name over a value, and where there is room for it a quiet word behind the name. */
final class HeadingCell extends VBox {

    private static final double BETWEEN = 6;

    private final Label name;
    private final Label value = Texts.label("", "middling", "bold");
    private final Label beside = Texts.label("", "body", "second");

    HeadingCell(String name, ObservableValue<String> value) {
        this.name = Texts.label(name, "body", "second");
        this.value.textProperty().bind(value);
        for (Label label : new Label[] {this.name, this.value, beside}) {
            label.setMinWidth(USE_PREF_SIZE);
            label.setWrapText(false);
        }
        beside.managedProperty().bind(beside.visibleProperty());
        beside.setVisible(false);
        getChildren().addAll(new HBox(BETWEEN, this.name, beside), this.value);
        setAlignment(Pos.CENTER_LEFT);
    }

    void beside(ObservableValue<String> word) {
        beside.textProperty().bind(word);
    }

    /** By how much the quiet word makes it wider. */
    double more() {
        double bare = name.prefWidth(-1);
        return beside.getText().isEmpty()
                ? 0
                : Math.ceil(Math.max(0, bare + BETWEEN + beside.prefWidth(-1) - Math.max(bare, value.prefWidth(-1))));
    }

    /** How wide it wants to be with nothing beside the name. */
    double bare() {
        double wide = Math.ceil(Math.max(minWidth(-1), prefWidth(-1)));
        return beside.isVisible() ? wide - more() : wide;
    }

    void tell(boolean told) {
        beside.setVisible(told && !beside.getText().isEmpty());
    }
}
