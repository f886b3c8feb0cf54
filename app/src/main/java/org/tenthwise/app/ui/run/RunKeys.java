package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** The lesser keys of the run, in two groups of rows: about the measuring, and about the record. */
final class RunKeys {

    private final List<Key> measuringKeys;
    private final List<Key> recordingKeys;
    private final VBox measuring;
    private final VBox recording;

    RunKeys(RunViewModel model, Words words) {
        Key again = new Key(Key.Kind.PLAIN, "", model::keepOrAgain);
        again.setId("again");
        again.textProperty().bind(model.keepOrAgainKey().label());
        again.disableProperty().bind(model.keepOrAgainKey().possible().map(possible -> !possible));
        model.keepableProperty().subscribe(figure -> {
            again.getStyleClass().removeAll("plain", "stop");
            again.getStyleClass().add(figure.isPresent() ? "stop" : "plain");
        });
        Key gauge = new Key(Key.Kind.PLAIN, words.say("gauge.card"), model::gauge);
        allow(model, gauge, "gauge", Allowed::gauge);
        Key dispose = new Key(Key.Kind.PLAIN, words.say("run.sign-for"), model::dispose);
        allow(model, dispose, "sign-for", Allowed::dispose);
        Key strike = new Key(Key.Kind.PLAIN, "", model::undoOrStrike);
        strike.textProperty()
                .bind(model.shownProperty()
                        .map(shown -> shown.allowed().undoOrStrikeLabel().orElseGet(() -> words.say("run.strike"))));
        Deaf strikeDeaf = new Deaf(strike);
        strike.textProperty().subscribe(text -> strikeDeaf.forAMoment());
        allow(model, strike, "strike", allowed -> allowed.undoOrStrikeLabel().isPresent());
        Key note = new Key(Key.Kind.PLAIN, words.say("run.note"), model::note);
        note.setId("note");
        Key more = new Key(Key.Kind.PLAIN, words.say("run.more"), model::more);
        more.setId("more");
        measuringKeys = List.of(again, gauge, dispose, more);
        measuring = group(measuringKeys);
        Key record = new Key(Key.Kind.PLAIN, words.say("run.record"), model::record);
        record.setId("record");
        recordingKeys = List.of(strike, note, record);
        recording = group(recordingKeys);
    }

    /** Measure anew, another gauge, sign for what did not pass, more to read and to do. */
    VBox measuring() {
        return measuring;
    }

    /** Strike out, or take back the answer given last; note, the record so far. */
    VBox recording() {
        return recording;
    }

    private static void allow(RunViewModel model, Key key, String id, Function<Allowed, Boolean> allowed) {
        key.setId(id);
        key.disableProperty().bind(model.shownProperty().map(shown -> !allowed.apply(shown.allowed())));
    }

    /** @param narrow whether there is room for two of the keys about the measuring side by side, not for all */
    void arrange(boolean narrow) {
        lay(measuring, measuringKeys, narrow ? 2 : measuringKeys.size());
        lay(recording, recordingKeys, recordingKeys.size());
    }

    /** As wide as their words where there is room; where there is not, none so narrow that a word breaks. */
    private static void lay(VBox rows, List<Key> keys, int inARow) {
        rows.getChildren().clear();
        for (int from = 0; from < keys.size(); from += inARow) {
            HBox row = new HBox(ScreenSizes.GAP);
            row.getChildren().addAll(keys.subList(from, Math.min(from + inARow, keys.size())));
            rows.getChildren().add(row);
        }
    }

    private static VBox group(List<Key> keys) {
        keys.forEach(key -> {
            key.breakNoWord();
            HBox.setHgrow(key, Priority.ALWAYS);
        });
        VBox rows = new VBox(ScreenSizes.GAP);
        rows.getStyleClass().add("run-keys");
        rows.setMinHeight(Region.USE_PREF_SIZE);
        lay(rows, keys, keys.size());
        return rows;
    }
}
