package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.bench.BenchFormState.Hand;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.bench.BenchFormState.Option;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Keypad;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.keys.Readout;
import org.tenthwise.model.words.Words;

/**
 * What lies under the hand: the number pad with its readout, or keys to choose from; the key that leads on at the same
 * height in both.
 */
final class HandSide extends StackPane {

    private static final double GAP = 8;
    private static final double LEAST = 200;
    /** Enough for what is asked and the figure, with large text too. */
    private static final double READOUT = 150;

    private static final int SHORT = 3;
    private static final int ACROSS = 4;

    private final SumViewModel model;
    private final VBox padSide;
    private final VBox chooseSide;
    private final Label asked = new Label();
    private final PagedRows options;
    private final List<Key> keys = new ArrayList<>();
    private List<String> offered = List.of();

    HandSide(SumViewModel model, Words words) {
        this.model = model;
        this.options = new PagedRows(words);
        getStyleClass().add("hand-panel");
        Keypad keypad = new Keypad(model, model::sign, words, lead("next"));
        keypad.setMinHeight(Region.USE_PREF_SIZE);
        Readout readout =
                new Readout(pad(Hand.Pad::asked), pad(Hand.Pad::figure), pad(Hand.Pad::unit), pad(Hand.Pad::line));
        readout.setPrefHeight(READOUT);
        VBox.setVgrow(readout, Priority.ALWAYS);
        padSide = new VBox(GAP, readout, keypad);
        asked.getStyleClass().add("heading");
        asked.setWrapText(true);
        asked.setMinHeight(USE_PREF_SIZE);
        options.setPrefHeight(LEAST);
        VBox.setVgrow(options, Priority.ALWAYS);
        Key lead = lead("next-chosen");
        lead.getStyleClass().add("answer");
        chooseSide = new VBox(GAP, asked, options, lead);
        chooseSide.getStyleClass().add("ask");
        getChildren().addAll(padSide, chooseSide);
        model.shownProperty().subscribe(shown -> show(shown.hand()));
    }

    private void show(Hand hand) {
        boolean chooses = hand instanceof Hand.Choose;
        padSide.setVisible(!chooses);
        chooseSide.setVisible(chooses);
        if (hand instanceof Hand.Choose choose) {
            asked.setText(choose.asked());
            offer(choose.options());
        }
    }

    private void offer(List<Option> choices) {
        List<String> names = choices.stream().map(Option::choice).toList();
        if (!names.equals(offered)) {
            offered = names;
            keys.clear();
            choices.forEach(option -> keys.add(key(option)));
            boolean small = choices.stream().allMatch(option -> option.label().length() <= SHORT);
            options.show(small ? grid() : keys);
        }
        for (int i = 0; i < choices.size(); i++) {
            keys.get(i).showChosen(choices.get(i).chosen());
        }
    }

    private Key key(Option option) {
        Key key = new Key(Key.Kind.PLAIN, option.label(), () -> model.choose(option.choice()));
        key.setId("choice-" + option.choice());
        key.setMinHeight(72);
        return key;
    }

    /** Several short ones beside one another. */
    private List<Region> grid() {
        List<Region> rows = new ArrayList<>();
        for (int from = 0; from < keys.size(); from += ACROSS) {
            HBox row = new HBox(GAP);
            for (int i = from; i < from + ACROSS; i++) {
                Region cell = i < keys.size() ? keys.get(i) : new Region();
                cell.setPrefWidth(64);
                HBox.setHgrow(cell, Priority.ALWAYS);
                row.getChildren().add(cell);
            }
            rows.add(row);
        }
        return rows;
    }

    private ObservableValue<String> pad(Function<Hand.Pad, String> part) {
        return model.shownProperty().map(shown -> shown.hand() instanceof Hand.Pad pad ? part.apply(pad) : "");
    }

    private Key lead(String id) {
        ObservableValue<KeyShown> next = model.shownProperty().map(BenchFormState::next);
        Key key = new Key(Key.Kind.COMMIT, next.map(KeyShown::word), next.map(KeyShown::line), model::next);
        key.setId(id);
        return key;
    }
}
