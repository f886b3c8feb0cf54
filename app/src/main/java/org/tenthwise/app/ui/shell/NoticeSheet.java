package org.tenthwise.app.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;

/**
 * A message over the screen in hand. The screen under it is seen to rest, neither moves nor takes a press, and the
 * message's own keys take none for the first moment, so that a finger already coming down answers nothing by chance.
 */
final class NoticeSheet extends StackPane {

    private final List<Key> keys = new ArrayList<>();

    NoticeSheet(Notice message, Consumer<Notice.NoticeKey> answered) {
        getStyleClass().add("message-ground");
        Label title = Texts.label(message.title(), "heading");
        Label words = Texts.label(message.words(), "middling");
        HBox replies = new HBox(8);
        replies.setAlignment(Pos.CENTER_RIGHT);
        for (Notice.NoticeKey reply : message.replies()) {
            boolean last = keys.size() == message.replies().size() - 1;
            Key key = new Key(last ? Key.Kind.COMMIT : Key.Kind.PLAIN, reply.label(), () -> answered.accept(reply));
            key.setPrefHeight(ScreenSizes.DECIDING_KEY);
            HBox.setHgrow(key, Priority.ALWAYS);
            key.setMouseTransparent(true);
            keys.add(key);
        }
        replies.getChildren().addAll(keys);
        VBox sheet = new VBox(title, words, replies);
        sheet.getStyleClass().add("message");
        sheet.setId("message");
        sheet.setMaxWidth(ScreenSizes.MESSAGE);
        sheet.setMaxHeight(USE_PREF_SIZE);
        sheet.setAccessibleText(message.title() + " " + message.words());
        Region veil = new Region();
        veil.getStyleClass().add("message-veil");
        getChildren().addAll(veil, sheet);
    }

    /** Begins to listen. */
    void shown() {
        keys.get(keys.size() - 1).requestFocus();
        keys.forEach(key -> new Deaf(key).forAMoment());
    }
}
