package org.tenthwise.app.ui.keys;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.IntFunction;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.model.words.Words;

/**
 * Rows of a list too long to be laid out whole, a page at a time: a row is made when it comes to be seen, and is as
 * high as it needs to be. Two keys below turn the page; where all rows fit, they are not there.
 */
public final class LongRows extends Region {

    private static final double GAP = 8;
    private static final double KEY_HEIGHT = 66;

    private final Key earlier;
    private final Key later;
    private final Deque<Integer> before = new ArrayDeque<>();
    private final List<Region> made = new ArrayList<>();
    private IntFunction<Region> rows = place -> new Region();
    private int count;
    private int first;
    private int seen;

    public LongRows(Words words) {
        earlier = new Key(Key.Kind.PLAIN, Icon.EARLIER, words.say("rows.earlier"), this::pageBack);
        later = new Key(Key.Kind.PLAIN, Icon.LATER, words.say("rows.later"), this::pageOn);
        earlier.setId("earlier-lines");
        later.setId("later-lines");
        getChildren().addAll(earlier, later);
    }

    /** @param row makes the row at a place from 0 to {@code count} - 1 */
    public void show(int count, IntFunction<Region> row) {
        this.count = count;
        this.rows = row;
        before.clear();
        turnTo(0);
    }

    private void pageOn() {
        before.push(first);
        turnTo(first + seen);
    }

    private void pageBack() {
        turnTo(before.pop());
    }

    private void turnTo(int place) {
        first = place;
        seen = 0;
        getChildren().removeAll(made);
        made.clear();
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double whole = getHeight() - getInsets().getTop() - getInsets().getBottom();
        double room = whole;
        fill(room);
        boolean turned = first > 0 || seen < count;
        if (turned) {
            room = whole - KEY_HEIGHT - GAP;
            fill(room);
        }
        double top = getInsets().getTop();
        for (int i = 0; i < made.size(); i++) {
            Region row = made.get(i);
            row.setVisible(i < seen);
            double height = heightOf(row);
            layoutInArea(row, getInsets().getLeft(), top, innerWidth(), height, 0, HPos.LEFT, VPos.TOP);
            top += height;
        }
        layoutKeys(turned);
    }

    /** Makes rows until one more would not fit, but one at least. */
    private void fill(double room) {
        double used = 0;
        seen = 0;
        while (first + seen < count) {
            if (seen == made.size()) {
                Region row = rows.apply(first + seen);
                made.add(row);
                getChildren().add(seen, row);
                row.applyCss();
            }
            used += heightOf(made.get(seen));
            if (seen > 0 && used > room + 0.5) {
                return;
            }
            seen++;
        }
    }

    private void layoutKeys(boolean turned) {
        Insets in = getInsets();
        double width = Math.floor((innerWidth() - GAP) / 2);
        double y = getHeight() - in.getBottom() - KEY_HEIGHT;
        earlier.setVisible(turned);
        later.setVisible(turned);
        earlier.setDisable(before.isEmpty());
        later.setDisable(first + seen >= count);
        layoutInArea(earlier, in.getLeft(), y, width, KEY_HEIGHT, 0, HPos.CENTER, VPos.CENTER);
        layoutInArea(later, in.getLeft() + width + GAP, y, width, KEY_HEIGHT, 0, HPos.CENTER, VPos.CENTER);
    }

    private double innerWidth() {
        return getWidth() - getInsets().getLeft() - getInsets().getRight();
    }

    private double heightOf(Region row) {
        return Math.ceil(Math.max(row.minHeight(innerWidth()), row.prefHeight(innerWidth())));
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return KEY_HEIGHT * 2 + GAP;
    }
}
