package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.bench.BenchFormState.Hand;
import org.tenthwise.app.ui.bench.BenchFormState.KeyShown;
import org.tenthwise.app.ui.bench.BenchFormState.Option;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Keypad;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.keys.Readout;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.workplace.HandPane;
import org.tenthwise.model.words.Words;

/** The hand of a bench sum: a figure is typed, or something is chosen. */
final class BenchHand {

    /** Letters of choices that stand beside one another. */
    private static final int SHORT = 3;

    private static final int ACROSS = 4;

    private final SumViewModel model;
    private final PagedRows options;
    private final List<Key> keys = new ArrayList<>();
    private final HandPane pane;
    private List<String> offered = List.of();

    BenchHand(SumViewModel model, Words words) {
        this.model = model;
        options = new PagedRows(words);
        options.setPrefHeight(ScreenSizes.LEAST_LIST);
        Key next = lead("next");
        Keypad keypad = new Keypad(model, model::sign, words, next);
        Key clear = keypad.clears(pad(Hand.Pad::figure).map(figure -> !figure.isEmpty()), words, model::clear);
        Readout readout = new Readout(
                pad(Hand.Pad::asked), pad(Hand.Pad::figure), pad(Hand.Pad::unit), pad(Hand.Pad::line), words);
        readout.setPrefHeight(ScreenSizes.READOUT);
        pane = new HandPane(readout, keypad, options, lead("next-chosen"));
        pane.focusStays(clear);
    }

    HandPane pane() {
        return pane;
    }

    void show(Hand hand) {
        if (hand instanceof Hand.Choose choose) {
            pane.ask(choose.asked(), () -> offer(choose.options()));
        } else {
            pane.showPad();
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
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        return key;
    }

    /** Several short ones beside one another. */
    private List<Region> grid() {
        List<Region> rows = new ArrayList<>();
        for (int from = 0; from < keys.size(); from += ACROSS) {
            HBox row = new HBox(ScreenSizes.GAP);
            for (int i = from; i < from + ACROSS; i++) {
                Region cell = i < keys.size() ? keys.get(i) : new Region();
                cell.setPrefWidth(ScreenSizes.KEY);
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
