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
    private final RowsInSight inSight = new RowsInSight();
    private List<StepLine> lines = List.of();

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
        inSight.show(lines.size(), inHand());
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
        inSight.turn(way);
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        layRows(in, getWidth() - in.getLeft() - in.getRight(), getHeight() - in.getTop() - in.getBottom());
        earlier.setDisable(inSight.isAtTheFirst());
        later.setDisable(inSight.isAtTheLast());
    }

    private void layRows(Insets in, double width, double height) {
        double least = leastRow();
        boolean keys = lines.size() * (least + GAP) - GAP > height;
        double room = keys ? height - ScreenSizes.PAGE_KEY - GAP : height;
        inSight.fit((int) ((room + GAP) / (least + GAP)));
        int shown = inSight.number();
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
        for (int i = 0; i < Math.max(inSight.number(), rows.size()); i++) {
            StepRow row = row(i);
            boolean seen = i < inSight.number();
            row.key().setVisible(seen);
            bands.get(i).setVisible(false);
            if (seen) {
                fill(row, bands.get(i), inSight.first() + i, i + 1 < inSight.number());
            }
        }
    }

    private void fill(StepRow row, HoldBand band, int place, boolean between) {
        StepLine line = lines.get(place);
        Optional<Hold> after = line.after().filter(hold -> between);
        Optional<Hold> before = place == inSight.first()
                ? Optional.empty()
                : lines.get(place - 1).after();
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
