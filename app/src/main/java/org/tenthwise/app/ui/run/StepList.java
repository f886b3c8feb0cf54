package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.geometry.Insets;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/**
 * The plan, step by step, in even rows that fill the column, with two keys for the steps before and after: nothing is
 * dragged. A hold point lies in the gap between two rows. The step in hand is in sight, with the one that comes next.
 */
final class StepList extends Region {

    private static final double GAP = ScreenSizes.GAP;
    private static final double BAND = 24;

    private final Key earlier;
    private final Key later;
    private final PictureFrames pictures;
    private final IntConsumer goTo;
    private final List<StepRow> rows = new ArrayList<>();
    private final List<HoldBand> bands = new ArrayList<>();
    private List<StepLine> lines = List.of();
    private int first;
    private int shown;
    private int revealed = -1;

    StepList(PictureFrames pictures, Words words, IntConsumer goTo) {
        this.pictures = pictures;
        this.goTo = goTo;
        getStyleClass().add("step-list");
        earlier = new Key(Key.Kind.PLAIN, Icon.EARLIER, words.say("rows.earlier"), () -> turn(-1));
        later = new Key(Key.Kind.PLAIN, Icon.LATER, words.say("rows.later"), () -> turn(1));
        earlier.setId("earlier");
        later.setId("later");
        getChildren().addAll(earlier, later);
        setMinHeight(0);
    }

    void show(List<StepLine> now) {
        lines = now;
        int inHand = inHand();
        if (inHand != revealed) {
            revealed = inHand;
            shown = 0;
        }
        requestLayout();
    }

    private int inHand() {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).inHand()) {
                return i;
            }
        }
        return 0;
    }

    private void turn(int way) {
        first = within(first + way * Math.max(1, shown));
        requestLayout();
    }

    private int within(int place) {
        return Math.max(0, Math.min(place, lines.size() - shown));
    }

    /** Stays where it is if the step in hand is to be seen there with what comes next. */
    private void reveal(int number) {
        boolean turned = shown != number;
        shown = number;
        int last = Math.min(revealed + 1, lines.size() - 1);
        if (turned && (revealed < first || last >= first + shown)) {
            first = revealed - Math.min(2, Math.max(0, shown - 2));
        }
        first = within(first);
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        layRows(in, getWidth() - in.getLeft() - in.getRight(), getHeight() - in.getTop() - in.getBottom());
        earlier.setDisable(first == 0);
        later.setDisable(first + shown >= lines.size());
    }

    private void layRows(Insets in, double width, double height) {
        double least = leastRow();
        boolean keys = lines.size() * (least + GAP) - GAP > height;
        double room = keys ? height - ScreenSizes.PAGE_KEY - GAP : height;
        reveal(Math.max(1, Math.min(lines.size(), (int) ((room + GAP) / (least + GAP)))));
        double high = Math.floor(Math.min(1.25 * least, (room - (shown - 1) * GAP) / shown));
        fill();
        for (int i = 0; i < shown; i++) {
            rows.get(i).key().resizeRelocate(in.getLeft(), in.getTop() + i * (high + GAP), width, high);
            double gap = in.getTop() + (i + 1) * (high + GAP) - GAP;
            bands.get(i).resizeRelocate(0, gap + (GAP - BAND) / 2, getWidth(), BAND);
        }
        double half = Math.floor((width - GAP) / 2);
        double top = getHeight() - in.getBottom() - ScreenSizes.PAGE_KEY;
        earlier.resizeRelocate(in.getLeft(), top, half, ScreenSizes.PAGE_KEY);
        later.resizeRelocate(in.getLeft() + half + GAP, top, half, ScreenSizes.PAGE_KEY);
        earlier.setVisible(keys);
        later.setVisible(keys);
    }

    private double leastRow() {
        return Math.max(ScreenSizes.KEY, Math.ceil(row(0).key().prefHeight(-1)));
    }

    private StepRow row(int place) {
        while (rows.size() <= place) {
            StepRow row = new StepRow(pictures, goTo);
            HoldBand band = new HoldBand();
            rows.add(row);
            bands.add(band);
            getChildren().add(rows.size() - 1, row.key());
            getChildren().add(band);
            row.key().applyCss();
            band.applyCss();
        }
        return rows.get(place);
    }

    private void fill() {
        for (int i = 0; i < Math.max(shown, rows.size()); i++) {
            StepRow row = row(i);
            boolean seen = i < shown;
            row.key().setVisible(seen);
            bands.get(i).setVisible(false);
            if (seen) {
                fill(row, bands.get(i), first + i, i + 1 < shown);
            }
        }
    }

    private void fill(StepRow row, HoldBand band, int place, boolean between) {
        StepLine line = lines.get(place);
        Optional<Hold> after = line.after().filter(hold -> between);
        Optional<Hold> before =
                place == first ? Optional.empty() : lines.get(place - 1).after();
        row.show(line, "", after.isPresent(), before.isPresent());
        after.ifPresent(hold -> {
            band.show(hold);
            band.setVisible(true);
        });
    }

    @Override
    protected double computePrefHeight(double width) {
        return 0;
    }
}
