package org.tenthwise.app.ui.bench;

import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/**
 * The form of a bench sum, in the grid of the run: fields, what comes of them, the panel under the hand; upright with
 * the result on top.
 */
final class SumView extends BorderPane {

    private static final double LIST = 248;
    private static final double LIST_LARGE = 300;
    private static final double PANEL = 352;
    private static final double PANEL_GLOVES = 376;
    private static final double PANEL_GLOVES_LARGE = 400;

    private final FieldList fields;
    private final FoundSheet found;
    private final HandSide hand;
    private final GridPane keys = new GridPane();

    SumView(SumViewModel model, Runnable list, PictureFrames pictures, Words words) {
        getStyleClass().add("bench");
        fields = new FieldList(model, words);
        found = new FoundSheet(model, pictures, words);
        hand = new HandSide(model, words);
        Key others = new Key(Key.Kind.PLAIN, words.say("bench.others"), list);
        others.setId("others");
        keys(
                others,
                told("unit", model, BenchFormState::unit, model::changeUnit),
                told("note-sum", model, BenchFormState::note, model::note));
    }

    private static Key told(String id, SumViewModel model, Function<BenchFormState, KeyShown> which, Runnable press) {
        ObservableValue<KeyShown> shown = model.shownProperty().map(which);
        Key key = new Key(Key.Kind.PLAIN, shown.map(KeyShown::word), shown.map(KeyShown::line), press);
        key.setId(id);
        key.disableProperty().bind(shown.map(now -> !now.ready()));
        return key;
    }

    private void keys(Key... row) {
        keys.getStyleClass().addAll("run-keys", "keys-row");
        keys.setHgap(8);
        double[] widths = {24, 21, 55};
        for (int i = 0; i < row.length; i++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(widths[i]);
            keys.getColumnConstraints().add(width);
            keys.add(row[i], i, 0);
        }
        keys.setMinHeight(USE_PREF_SIZE);
    }

    void arrange(Arrangement arrangement, boolean large, boolean gloves) {
        found.arrange(large, arrangement);
        wide(hand, !gloves ? PANEL : large ? PANEL_GLOVES_LARGE : PANEL_GLOVES);
        setLeft(null);
        setCenter(null);
        setRight(null);
        setBottom(null);
        VBox list = new VBox(fields);
        list.getStyleClass().add("list-column");
        VBox.setVgrow(fields, Priority.ALWAYS);
        VBox.setVgrow(found, Priority.ALWAYS);
        VBox.setVgrow(hand, Priority.ALWAYS);
        if (arrangement == Arrangement.PORTRAIT) {
            HBox.setHgrow(list, Priority.ALWAYS);
            list.getChildren().add(keys);
            HBox lower = new HBox(list, hand);
            lower.getStyleClass().add("lined-above");
            setCenter(found);
            setBottom(lower);
        } else {
            wide(list, large ? LIST_LARGE : LIST);
            list.getStyleClass().add("lined-right");
            VBox right = new VBox(hand);
            right.getStyleClass().add("lined-left");
            setLeft(list);
            setCenter(new VBox(found, keys));
            setRight(right);
        }
    }

    private static void wide(Region region, double width) {
        region.setMinWidth(width);
        region.setPrefWidth(width);
        region.setMaxWidth(width);
    }
}
