package org.tenthwise.app.ui.run;

import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.run.RunScreenState.OtherWay;
import org.tenthwise.app.ui.run.RunScreenState.Undo;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** The lesser keys of the run, in two groups of rows: about the measuring, and about the record. */
final class RunKeys {

    private final HBox measuring;
    private final HBox recording;

    RunKeys(RunViewModel model, Words words) {
        Key again = new Key(Key.Kind.PLAIN, "", model::keepOrAgain);
        again.setId("again");
        again.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.keepableProperty()
                                .get()
                                .map(figure -> words.say("run.keep", figure.replace('-', '\u2212')))
                                .or(() -> model.shownProperty()
                                        .get()
                                        .allowed()
                                        .otherWay()
                                        .map(OtherWay::label))
                                .orElseGet(() -> words.say("run.read-again")),
                        model.keepableProperty(),
                        model.shownProperty()));
        again.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> {
                            Allowed allowed = model.shownProperty().get().allowed();
                            return !allowed.again()
                                    && allowed.otherWay().isEmpty()
                                    && model.keepableProperty().get().isEmpty();
                        },
                        model.keepableProperty(),
                        model.shownProperty()));
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
                        .map(shown ->
                                shown.allowed().undo().map(Undo::label).orElseGet(() -> words.say("run.strike"))));
        Deaf strikeDeaf = new Deaf(strike);
        strike.textProperty().subscribe(text -> strikeDeaf.forAMoment());
        allow(
                model,
                strike,
                "strike",
                allowed -> allowed.strike() || allowed.undo().isPresent());
        Key note = new Key(Key.Kind.PLAIN, words.say("run.note"), model::note);
        note.setId("note");
        Key bench = new Key(Key.Kind.PLAIN, words.say("run.bench"), model::bench);
        bench.setId("bench");
        measuring = group(again, gauge, dispose, bench);
        Key record = new Key(Key.Kind.PLAIN, words.say("run.record"), model::record);
        record.setId("record");
        recording = group(strike, note, record);
    }

    /** Measure anew, another gauge, sign for what did not pass, the sums of the bench. */
    HBox measuring() {
        return measuring;
    }

    /** Strike out, or take back the answer given last; note, the record so far. */
    HBox recording() {
        return recording;
    }

    private static void allow(RunViewModel model, Key key, String id, Function<Allowed, Boolean> allowed) {
        key.setId(id);
        key.disableProperty().bind(model.shownProperty().map(shown -> !allowed.apply(shown.allowed())));
    }

    /** As wide as their words where there is room; where there is not, none so narrow that a word breaks. */
    private static HBox group(Key... keys) {
        HBox row = new HBox(ScreenSizes.GAP);
        row.getStyleClass().add("run-keys");
        for (Key key : keys) {
            key.breakNoWord();
            HBox.setHgrow(key, Priority.ALWAYS);
            row.getChildren().add(key);
        }
        row.setMinHeight(Region.USE_PREF_SIZE);
        return row;
    }
}
