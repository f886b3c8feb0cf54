package org.tenthwise.app.ui.unopened;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.words.Words;

/** Says that the store is not open, which one it is, and how to open another. Nothing is written from here. */
public final class UnopenedScreen implements Screen {

    private static final double WIDTH = 720;
    private static final double KEY_HEIGHT = 96;

    private final StackPane root = new StackPane();
    private final String title;

    /**
     * @param why a sentence for the person at the machine
     * @param store where the store lies
     */
    public UnopenedScreen(Words words, String why, String store, Runnable again, Runnable close) {
        title = words.say("unopened.title");
        Key closing = new Key(Key.Kind.PLAIN, words.say("unopened.close"), close);
        closing.setId("close");
        Key trying = new Key(Key.Kind.COMMIT, words.say("unopened.again"), again);
        trying.setId("again");
        HBox keys = new HBox(8, closing, trying);
        keys.getChildren().forEach(key -> HBox.setHgrow(key, Priority.ALWAYS));
        closing.setPrefHeight(KEY_HEIGHT);
        trying.setPrefHeight(KEY_HEIGHT);
        VBox sheet = new VBox(
                16,
                label(title, "title"),
                label(why, "middling"),
                label(words.say("unopened.store", store), "body"),
                label(words.say("unopened.another"), "body"),
                keys);
        sheet.setMaxWidth(WIDTH);
        sheet.setMaxHeight(Region.USE_PREF_SIZE);
        root.setAlignment(Pos.CENTER);
        root.getChildren().add(sheet);
    }

    @Override
    public Region root() {
        return root;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one column reads the same either way
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
