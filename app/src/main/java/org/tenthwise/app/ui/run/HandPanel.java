package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Keypad;
import org.tenthwise.app.ui.keys.Readout;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.Panel;
import org.tenthwise.app.ui.run.RunScreenState.Reply;
import org.tenthwise.model.words.Words;

/**
 * What lies under the hand: the number pad with its readout, or a question with its answers; the commit key at the same
 * height in both.
 */
final class HandPanel extends StackPane {

    /** A little longer than the model is deaf, which has the last word. */
    private static final Duration DEAF = Duration.millis(450);

    private final RunViewModel model;
    private final VBox padSide;
    private final VBox askSide;
    private final Label asked = new Label();
    private final VBox replies = new VBox(8);
    private final PauseTransition padDeaf = new PauseTransition(DEAF);

    HandPanel(RunViewModel model, Words words) {
        this.model = model;
        getStyleClass().add("hand-panel");
        Keypad keypad = new Keypad(model, model::sign, words, commit("commit"));
        keypad.setMinHeight(Region.USE_PREF_SIZE);
        model.takesFiguresProperty().subscribe(keypad::takeFigures);
        Readout readout = new Readout(
                model.promptProperty(), model.figureProperty(), pad(Panel.Pad::unit), pad(Panel.Pad::comesTo));
        VBox.setVgrow(readout, Priority.ALWAYS);
        padSide = new VBox(8, readout, keypad);
        askSide = askSide();
        askSide.setVisible(false);
        getChildren().addAll(padSide, askSide);
        model.shownProperty().subscribe(shown -> show(shown.panel()));
    }

    private VBox askSide() {
        asked.getStyleClass().add("heading");
        asked.setWrapText(true);
        asked.setMinHeight(USE_PREF_SIZE);
        Region space = new Region();
        VBox.setVgrow(space, Priority.ALWAYS);
        Key commit = commit("commit-answered");
        commit.getStyleClass().add("answer");
        VBox side = new VBox(16, asked, space, replies, commit);
        side.getStyleClass().add("ask");
        return side;
    }

    private void show(Panel panel) {
        boolean focusHere = holdsFocus(this);
        boolean asks = panel instanceof Panel.Ask;
        if (!asks && askSide.isVisible()) {
            deafForAMoment(padSide, padDeaf);
        }
        padSide.setVisible(!asks);
        askSide.setVisible(asks);
        if (panel instanceof Panel.Ask ask) {
            asked.setText(ask.words());
            replies.getChildren().setAll(keys(ask.replies()));
        }
        if (focusHere && !holdsFocus(asks ? askSide : padSide)) {
            requestFocus();
        }
    }

    /**
     * The focus stays here when the key that has it goes: the tabulator leads to the next key here, not to the first of
     * the screen.
     */
    private static boolean holdsFocus(Node part) {
        Node at = part.getScene() == null ? null : part.getScene().getFocusOwner();
        while (at != null && at != part) {
            at = at.getParent();
        }
        return at != null;
    }

    private List<Key> keys(List<Reply> offered) {
        return offered.stream()
                .map(reply -> {
                    Key key = new Key(Key.Kind.PLAIN, reply.label(), () -> model.reply(reply.meaning()));
                    key.getStyleClass().add("answer");
                    key.setId("reply-" + offered.indexOf(reply));
                    deafForAMoment(key, new PauseTransition(DEAF));
                    return key;
                })
                .toList();
    }

    /**
     * A press is not even shown while what lies under the finger does not act yet: the second tap on an answer types no
     * figure.
     */
    private static void deafForAMoment(Node keys, PauseTransition deaf) {
        keys.setMouseTransparent(true);
        deaf.setOnFinished(event -> keys.setMouseTransparent(false));
        deaf.playFromStart();
    }

    private ObservableValue<String> pad(Function<Panel.Pad, String> part) {
        return model.shownProperty().map(shown -> shown.panel() instanceof Panel.Pad pad ? part.apply(pad) : "");
    }

    private Key commit(String id) {
        Key key = new Key(
                Key.Kind.COMMIT,
                model.commitProperty().map(Commit::word),
                model.commitProperty().map(Commit::line),
                model::press);
        key.setId(id);
        PauseTransition deaf = new PauseTransition(DEAF);
        model.commitProperty().map(now -> now.word() + now.line()).subscribe(now -> deafForAMoment(key, deaf));
        key.disableProperty().bind(model.commitProperty().map(commit -> commit.act() == Act.WAIT));
        key.disabledProperty().subscribe(disabled -> {
            if (disabled && holdsFocus(key)) {
                requestFocus();
            }
        });
        return key;
    }
}
