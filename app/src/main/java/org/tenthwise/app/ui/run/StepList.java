package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The plan, step by step, a page at a time, with its hold points as bars between the steps. */
final class StepList extends StackPane {

    private static final double BETWEEN = 8;

    private final List<StepRow> steps = new ArrayList<>();
    private final List<HoldBar> holds = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private final PagedRows rows;
    private int revealed = -1;

    /** @param lines as they are when the list is made; steps and hold points stay the same for a run */
    StepList(List<StepLine> lines, PictureFrames pictures, Words words, IntConsumer goTo) {
        getStyleClass().add("step-list");
        rows = new PagedRows(words, BETWEEN);
        rows.keepKeys();
        setMinHeight(0);
        setPrefHeight(0);
        List<Region> all = new ArrayList<>();
        for (StepLine line : lines) {
            StepRow row = new StepRow(line.number(), pictures, () -> goTo.accept(line.number()));
            steps.add(row);
            places.add(all.size());
            all.add(row.key());
            if (line.after().isPresent()) {
                HoldBar bar = new HoldBar();
                holds.add(bar);
                all.add(bar);
            }
        }
        rows.show(all);
        getChildren().add(rows);
    }

    void show(List<StepLine> lines) {
        int hold = 0;
        for (int i = 0; i < lines.size(); i++) {
            StepLine line = lines.get(i);
            steps.get(i).show(line);
            if (line.after().isPresent()) {
                holds.get(hold++).show(line.after().get());
            }
            if (line.inHand() && revealed != i) {
                revealed = i;
                rows.reveal(places.get(i));
            }
        }
    }

    /** Two lines across the list, thick and thin, and what they hold. */
    private static final class HoldBar extends VBox {

        private final Label title = Texts.label("", "body", "bold");
        private final Label words = Texts.label("", "body", "second");

        HoldBar() {
            getStyleClass().add("hold-bar");
            getChildren().addAll(title, words);
        }

        void show(Hold hold) {
            title.setText(hold.title());
            words.setText(hold.words());
        }
    }
}
