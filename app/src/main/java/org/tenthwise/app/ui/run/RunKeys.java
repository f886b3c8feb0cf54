package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.run.RunShown.Allowed;
import org.tenthwise.app.ui.run.RunShown.OtherWay;

/** The lesser keys of the run, in two groups of rows: about the measuring, and about the record. */
final class RunKeys {

    private final GridPane measuring;
    private final GridPane recording;

    RunKeys(RunViewModel model, Words words) {
        Key again = new Key(Key.Kind.PLAIN, "", model::againOrOtherWay);
        again.textProperty().bind(model.shownProperty().map(shown -> shown.allowed().otherWay().map(OtherWay::label)
                .orElseGet(() -> words.say("run.read-again"))));
        allow(model, again, "again", allowed -> allowed.again() || allowed.otherWay().isPresent());
        Key gauge = new Key(Key.Kind.PLAIN, words.say("run.other-gauge"), model::otherGauge);
        allow(model, gauge, "other-gauge", Allowed::gauge);
        Key dispose = new Key(Key.Kind.PLAIN, words.say("run.sign-for"), model::dispose);
        allow(model, dispose, "sign-for", Allowed::dispose);
        Key strike = new Key(Key.Kind.PLAIN, words.say("run.strike"), model::strike);
        allow(model, strike, "strike", Allowed::strike);
        Key note = new Key(Key.Kind.PLAIN, words.say("run.note"), model::note);
        note.setId("note");
        Key bench = new Key(Key.Kind.PLAIN, words.say("run.bench"), model::bench);
        bench.setId("bench");
        measuring = group(List.of(again, gauge, dispose, bench), List.of(1.03, 0.80, 0.74, 0.80));
        Key record = new Key(Key.Kind.PLAIN, words.say("run.record"), model::record);
        record.setId("record");
        recording = group(List.of(strike, note, record), List.of(0.98, 0.89, 1.13));
    }

    /** Measure anew, another gauge, sign for what did not pass, the sums of the bench. */
    GridPane measuring() {
        return measuring;
    }

    /** Strike out, note, the record so far. */
    GridPane recording() {
        return recording;
    }

    private static void allow(RunViewModel model, Key key, String id, Function<Allowed, Boolean> allowed) {
        key.setId(id);
        key.disableProperty().bind(model.shownProperty().map(shown -> !allowed.apply(shown.allowed())));
    }

    /** @param widths of the keys, set against each other: a long word must not break */
    private static GridPane group(List<Key> keys, List<Double> widths) {
        double all = widths.stream().mapToDouble(Double::doubleValue).sum();
        GridPane row = new GridPane();
        row.getStyleClass().add("run-keys");
        row.setHgap(8);
        for (int i = 0; i < keys.size(); i++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(100.0 * widths.get(i) / all);
            row.getColumnConstraints().add(width);
            row.add(keys.get(i), i, 0);
        }
        row.setMinHeight(GridPane.USE_PREF_SIZE);
        return row;
    }
}
