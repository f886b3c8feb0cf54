package org.tenthwise.app.ui.keys;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.theme.Icon;

/**
 * Something to press: at least 64 × 64, acts on release, shows the press at once.
 *
 * <p>Its spoken name is its text unless another is set. Keep 8 px to the next key.
 */
public final class Key extends Button {

    /** What a key is for, and so how it looks. */
    public enum Kind {
        PLAIN,
        /** Takes what was typed or chosen; one on a screen. */
        COMMIT,
        /** Stops the work: a doubt. */
        STOP,
        /** No outline: beside things that matter more. */
        QUIET
    }

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private Key(Kind kind, Runnable press) {
        getStyleClass().setAll("key", kind.name().toLowerCase(Locale.ROOT));
        setWrapText(true);
        setMnemonicParsing(false);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        setOnAction(event -> press.run());
    }

    public Key(Kind kind, String text, Runnable press) {
        this(kind, press);
        setText(text);
        accessibleTextProperty().bind(textProperty());
    }

    /** A key with a sign instead of words. */
    public Key(Kind kind, Icon icon, String spoken, Runnable press) {
        this(kind, press);
        setGraphic(icon.drawn());
        setAccessibleText(spoken);
    }

    /** A key with a word and a smaller line under it; the line may come to be empty and then takes no room. */
    public Key(Kind kind, ObservableValue<String> word, ObservableValue<String> line, Runnable press) {
        this(kind, press);
        Label upper = label("key-word", word);
        Label lower = label("key-line", line);
        lower.visibleProperty().bind(lower.textProperty().isNotEmpty());
        lower.managedProperty().bind(lower.visibleProperty());
        VBox both = new VBox(upper, lower);
        both.setAlignment(Pos.CENTER);
        both.setMouseTransparent(true);
        setGraphic(both);
        accessibleTextProperty().bind(Bindings.createStringBinding(
                () -> (upper.getText() + " " + lower.getText()).strip(), upper.textProperty(), lower.textProperty()));
    }

    /** Whether the key stands for what is chosen now. */
    public void showChosen(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    private static Label label(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.textProperty().bind(text);
        return label;
    }
}
