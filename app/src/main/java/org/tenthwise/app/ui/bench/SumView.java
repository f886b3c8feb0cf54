package org.tenthwise.app.ui.bench;

import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.workplace.Workplace;
import org.tenthwise.model.words.Words;

/**
 * The form of a bench sum, in the grid of the run: fields, what comes of them, the panel under the hand; upright with
 * the result on top.
 */
final class SumView extends StackPane {

    /** How the keys share their row, in percent. */
    private static final List<Double> KEYS = List.of(22.0, 17.0, 23.0, 38.0);

    private final FieldList fields;
    private final FoundSheet found;
    private final BenchHand hand;
    private final Workplace workplace;

    SumView(SumViewModel model, Runnable list, PictureFrames pictures, Words words) {
        getStyleClass().add("bench");
        fields = new FieldList(model, words);
        found = new FoundSheet(model, pictures, words);
        hand = new BenchHand(model, words);
        Key others = new Key(Key.Kind.PLAIN, words.say("bench.others"), list);
        others.setId("others");
        workplace = new Workplace(
                fields,
                found,
                hand.pane(),
                List.of(keys(
                        others,
                        told("unit", model, BenchFormState::unit, model::changeUnit),
                        told("decimals", model, BenchFormState::decimals, model::changeDecimals),
                        told("note-sum", model, BenchFormState::note, model::note))));
        getChildren().add(workplace);
    }

    void show(BenchFormState shown) {
        fields.show(shown.fields());
        found.show(shown);
        hand.show(shown.hand());
    }

    private static Key told(String id, SumViewModel model, Function<BenchFormState, KeyShown> which, Runnable press) {
        ObservableValue<KeyShown> shown = model.shownProperty().map(which);
        Key key = new Key(Key.Kind.PLAIN, shown.map(KeyShown::word), shown.map(KeyShown::line), press);
        key.setId(id);
        key.disableProperty().bind(shown.map(now -> !now.ready()));
        return key;
    }

    private static GridPane keys(Key... row) {
        GridPane keys = new GridPane();
        keys.getStyleClass().add("run-keys");
        keys.setHgap(ScreenSizes.GAP);
        for (int i = 0; i < row.length; i++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(KEYS.get(i));
            keys.getColumnConstraints().add(width);
            keys.add(row[i], i, 0);
        }
        keys.setMinHeight(USE_PREF_SIZE);
        return keys;
    }

    void arrange(Arrangement arrangement, Look look) {
        found.arrange(look.largeTextProperty().get());
        workplace.arrange(arrangement, look);
    }
}
