package org.tenthwise.app.ui.keys;

import java.util.Arrays;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Word;

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

    private static final double LEAST = 64;
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final Optional<Region> content;

    private Key(Kind kind, Optional<Region> content, Runnable press) {
        this.content = content;
        getStyleClass().setAll("key", Word.of(kind));
        setWrapText(true);
        setMnemonicParsing(false);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        setOnAction(event -> press.run());
        content.ifPresent(inside -> {
            inside.setMouseTransparent(true);
            setGraphic(inside);
        });
    }

    public Key(Kind kind, String text, Runnable press) {
        this(kind, Optional.empty(), press);
        setText(text);
        accessibleTextProperty().bind(textProperty());
    }

    /** A small one on a heading or a title, which leads elsewhere or sets the look. */
    public static Key onward(String id, String text, Runnable press) {
        Key key = new Key(Kind.PLAIN, text, press);
        key.setId(id);
        key.getStyleClass().add("home-setting");
        key.setMinWidth(USE_PREF_SIZE);
        return key;
    }

    /** As wide as every other key that shares its line so. */
    public Key shared() {
        setPrefWidth(ScreenSizes.SHARE);
        HBox.setHgrow(this, Priority.ALWAYS);
        return this;
    }

    /** A key with a sign instead of words. */
    public Key(Kind kind, Icon icon, String spoken, Runnable press) {
        this(kind, Optional.empty(), press);
        setGraphic(icon.drawn());
        speak(spoken);
    }

    /** A key with something laid out on it that fills it and wraps in it; {@link #speak} must be called. */
    public Key(Kind kind, Region content, Runnable press) {
        this(kind, Optional.of(content), press);
    }

    /**
     * A key with a word and a smaller line under it; the line gives way where it is empty or there is no room for it.
     */
    public Key(Kind kind, ObservableValue<String> word, ObservableValue<String> line, Runnable press) {
        this(kind, Optional.of(new TwoLines(word, line)), press);
        speak(word, line);
    }

    /** A key of a form: what it asks for, and on one line what is filled in, as much of it as there is room for. */
    public static Key field(ObservableValue<String> name, ObservableValue<String> value, Runnable press) {
        Key key = new Key(Kind.PLAIN, Optional.of(TwoLines.elided(name, value)), press);
        key.getStyleClass().addAll("row", "form-field");
        key.speak(name, value);
        return key;
    }

    /** A row of a list that leads on: a smaller line, and under it what the row is of. */
    public static Key row(String id, String line, String title, Runnable press) {
        Key key = field(Bindings.createStringBinding(() -> line), Bindings.createStringBinding(() -> title), press);
        key.setId(id);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        return key;
    }

    private void speak(ObservableValue<String> word, ObservableValue<String> line) {
        accessibleTextProperty()
                .bind(Bindings.createStringBinding(
                        () -> (word.getValue() + " " + line.getValue()).strip(), word, line));
    }

    /** Gives the key another spoken name than its text. */
    public void speak(String spoken) {
        accessibleTextProperty().unbind();
        setAccessibleText(spoken);
    }

    /** Keeps the key as wide as the widest word on it. */
    public void breakNoWord() {
        minWidthProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> Math.max(LEAST, Math.ceil(widestWord()) + across()),
                        textProperty(),
                        fontProperty(),
                        insetsProperty()));
    }

    private double widestWord() {
        return Arrays.stream(getText().split("\\s+"))
                .mapToDouble(word -> {
                    Text alone = new Text(word);
                    alone.setFont(getFont());
                    return alone.getLayoutBounds().getWidth();
                })
                .max()
                .orElse(0);
    }

    /** Whether the key stands for what is chosen now. */
    public void showChosen(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    @Override
    protected double computePrefWidth(double height) {
        return content.map(inside -> Math.ceil(inside.prefWidth(-1)) + across())
                .orElseGet(() -> super.computePrefWidth(height));
    }

    @Override
    protected double computePrefHeight(double width) {
        return content.map(inside -> Math.ceil(inside.prefHeight(width < 0 ? -1 : width - across())) + down())
                .orElseGet(() -> super.computePrefHeight(width));
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        Insets in = getInsets();
        content.ifPresent(inside ->
                inside.resizeRelocate(in.getLeft(), in.getTop(), getWidth() - across(), getHeight() - down()));
    }

    private double across() {
        return getInsets().getLeft() + getInsets().getRight();
    }

    private double down() {
        return getInsets().getTop() + getInsets().getBottom();
    }
}
