package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Keypad;
import org.tenthwise.app.ui.keys.Readout;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.app.ui.run.RunScreenState.ReplyKey;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.workplace.HandPane;
import org.tenthwise.model.words.Words;

/**
 * The hand of the run: a figure is typed, or a question answered. What changes under the finger is deaf for a moment.
 */
final class RunHand {

    private final RunViewModel model;
    private final VBox replies = new VBox(ScreenSizes.GAP);
    private final HandPane pane;
    private final Deaf keypadDeaf;

    RunHand(RunViewModel model, Words words) {
        this.model = model;
        Key commit = commit("commit");
        Key answered = commit("commit-answered");
        Keypad keypad = new Keypad(model, model::sign, model.pad().signKeyProperty(), words, commit);
        Key clear = keypad.clears(model.figureStandsProperty(), words, model::clear);
        keypadDeaf = new Deaf(keypad);
        model.takesFiguresProperty().subscribe(keypad::takeFigures);
        Readout readout = new Readout(
                model.promptProperty(),
                model.figureProperty(),
                model.pad().offeredProperty(),
                pad(PromptPanel.Pad::unit),
                pad(PromptPanel.Pad::comesTo),
                words);
        replies.setAlignment(Pos.BOTTOM_LEFT);
        pane = new HandPane(readout, keypad, replies, answered);
        pane.focusStays(commit);
        pane.focusStays(clear);
    }

    HandPane pane() {
        return pane;
    }

    void show(PromptPanel panel) {
        if (panel instanceof PromptPanel.Ask ask) {
            pane.ask(ask.words(), () -> replies.getChildren().setAll(keys(ask.replies())));
        } else {
            if (pane.asks()) {
                keypadDeaf.forAMoment();
            }
            pane.showPad();
        }
    }

    private List<Key> keys(List<ReplyKey> offered) {
        return offered.stream()
                .map(reply -> {
                    Key key = new Key(Key.Kind.PLAIN, reply.label(), () -> model.reply(reply.meaning()));
                    key.getStyleClass().add("answer");
                    key.setId("reply-" + offered.indexOf(reply));
                    Deaf.forLonger(key).forAMoment();
                    return key;
                })
                .toList();
    }

    private ObservableValue<String> pad(Function<PromptPanel.Pad, String> part) {
        return model.shownProperty().map(shown -> shown.panel() instanceof PromptPanel.Pad pad ? part.apply(pad) : "");
    }

    private Key commit(String id) {
        Key key = new Key(
                Key.Kind.COMMIT,
                model.commitProperty().map(Commit::word),
                model.commitProperty().map(Commit::line),
                model::press);
        key.setId(id);
        Deaf deaf = new Deaf(key);
        model.commitProperty().map(now -> now.word() + now.line()).subscribe(now -> deaf.forAMoment());
        key.disableProperty().bind(model.commitProperty().map(commit -> commit.act() == Act.WAIT));
        return key;
    }
}
