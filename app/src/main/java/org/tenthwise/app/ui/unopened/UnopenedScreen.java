package org.tenthwise.app.ui.unopened;

import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** Says that the store is not open, which one it is, and how to open another. Nothing is written from here. */
public final class UnopenedScreen extends Screen {

    /**
     * @param why a sentence for the person at the machine
     * @param store where the store lies
     */
    public UnopenedScreen(Words words, String why, String store, Runnable again, Runnable close) {
        super(words.say("unopened.title"));
        Key closing = new Key(Key.Kind.PLAIN, words.say("unopened.close"), close);
        closing.setId("close");
        Key trying = new Key(Key.Kind.COMMIT, words.say("unopened.again"), again);
        trying.setId("again");
        HBox keys = new HBox(8, closing, trying);
        keys.getChildren().forEach(key -> HBox.setHgrow(key, Priority.ALWAYS));
        closing.setPrefHeight(ScreenSizes.DECIDING_KEY);
        trying.setPrefHeight(ScreenSizes.DECIDING_KEY);
        VBox sheet = new VBox(
                16,
                Texts.label(title(), "title"),
                Texts.label(why, "middling"),
                Texts.label(words.say("unopened.store", store), "body"),
                Texts.label(words.say("unopened.another"), "body"),
                keys);
        sheet.setMaxWidth(ScreenSizes.UNOPENED);
        sheet.setMaxHeight(Region.USE_PREF_SIZE);
        setCenter(sheet);
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one column reads the same either way
    }
}
