package org.tenthwise.app.ui.keys;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.model.words.Words;

/**
 * Rows under one another, as many as there is room for, with two keys below for the rows before and after: nothing is
 * dragged. Where all rows fit, the keys are not there. Rows are as high as they need to be; none is cut.
 */
public final class PagedRows extends Region {

    private static final double GAP = 8;
    private static final double KEY_HEIGHT = 66;

    private final Key earlier;
    private final Key later;
    private final double between;
    private int first;
    private boolean keysAlways;
    private List<Region> rows = List.of();
    private int wanted;
    private int shown;
    private boolean revealing;
    private Runnable lastSeen = () -> {};

    public PagedRows(Words words) {
        this(words, GAP);
    }

    /** @param between room between two rows, for rows that bring room of their own */
    public PagedRows(Words words, double between) {
        this.between = between;
        earlier = new Key(Key.Kind.PLAIN, Icon.EARLIER, words.say("rows.earlier"), this::pageBack);
        later = new Key(Key.Kind.PLAIN, Icon.LATER, words.say("rows.later"), this::pageOn);
        earlier.setId("earlier");
        later.setId("later");
        getChildren().addAll(earlier, later);
    }

    /** Keeps the two keys in their place even where all rows fit. */
    public void keepKeys() {
        keysAlways = true;
        requestLayout();
    }

    public List<Region> all() {
        return rows;
    }

    /** Shows other rows, from the first that leaves {@link #reveal} kept. */
    public void show(List<? extends Region> others) {
        rows = List.copyOf(others);
        getChildren().setAll(rows);
        getChildren().addAll(earlier, later);
        first = Math.max(0, Math.min(first, rows.size() - 1));
        wanted = Math.min(wanted, Math.max(0, rows.size() - 1));
        requestLayout();
    }

    /** @param lastSeen called when the last row comes to be seen; may show the same rows with more behind them */
    public void onLastSeen(Runnable lastSeen) {
        this.lastSeen = lastSeen;
    }

    /** Turns to the page that has the row {@code index}, if it is not to be seen. */
    public void reveal(int index) {
        wanted = index;
        revealing = true;
        requestLayout();
    }

    private void pageBack() {
        double room = rowRoom();
        int start = first;
        while (start > 0 && height(start - 1, first) <= room) {
            start--;
        }
        first = start == first ? Math.max(0, start - 1) : start;
        requestLayout();
    }

    private void pageOn() {
        first = Math.min(first + Math.max(1, shown), lastStart());
        requestLayout();
    }

    /** The latest first row at which the last row is still to be seen and the page is full. */
    private int lastStart() {
        double room = rowRoom();
        int start = Math.max(0, rows.size() - 1);
        while (start > 0 && height(start - 1, rows.size()) <= room) {
            start--;
        }
        return start;
    }

    private double innerWidth() {
        return getWidth() - getInsets().getLeft() - getInsets().getRight();
    }

    private boolean keysShown() {
        Insets in = getInsets();
        return keysAlways || height(0, rows.size()) > getHeight() - in.getTop() - in.getBottom();
    }

    private double rowRoom() {
        Insets in = getInsets();
        return getHeight() - in.getTop() - in.getBottom() - (keysShown() ? KEY_HEIGHT + GAP : 0);
    }

    private double height(int from, int to) {
        double height = 0;
        for (int i = from; i < to; i++) {
            height += heightOf(rows.get(i)) + (i > from ? between : 0);
        }
        return height;
    }

    /**
     * Stays where it is if the wanted row is to be seen there with the row after it; otherwise has a row or two before
     * it.
     */
    private int revealed(int start, double room) {
        int after = Math.min(wanted + 1, rows.size() - 1);
        if (wanted >= start && height(start, after + 1) <= room) {
            return start;
        }
        int before = Math.max(0, wanted - 2);
        while (before < wanted && height(before, after + 1) > room) {
            before++;
        }
        return Math.min(before, lastStart());
    }

    private double heightOf(Region row) {
        double width = innerWidth();
        return Math.ceil(Math.max(row.minHeight(width), row.prefHeight(width)));
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        boolean keys = keysShown();
        double room = rowRoom();
        int start = Math.min(first, lastStart());
        if (revealing) {
            start = revealed(start, room);
            revealing = false;
        }
        first = start;
        double top = in.getTop();
        shown = 0;
        for (int i = 0; i < rows.size(); i++) {
            Region row = rows.get(i);
            double height = heightOf(row);
            boolean fits = i >= start && shown == i - start && top + height <= in.getTop() + room + 0.5;
            row.setVisible(fits);
            if (fits) {
                layoutInArea(row, in.getLeft(), top, innerWidth(), height, 0, HPos.LEFT, VPos.TOP);
                top += height + between;
                shown++;
            }
        }
        layoutKeys(keys, start);
        if (start + shown >= rows.size()) {
            lastSeen.run();
        }
    }

    private void layoutKeys(boolean keys, int start) {
        Insets in = getInsets();
        double width = Math.floor((innerWidth() - GAP) / 2);
        double y = getHeight() - in.getBottom() - KEY_HEIGHT;
        place(earlier, keys, in.getLeft(), y, width);
        place(later, keys, in.getLeft() + width + GAP, y, width);
        earlier.setDisable(start == 0);
        later.setDisable(start + shown >= rows.size());
    }

    private void place(Node key, boolean visible, double x, double y, double width) {
        key.setVisible(visible);
        layoutInArea(key, x, y, width, KEY_HEIGHT, 0, HPos.CENTER, VPos.CENTER);
    }

    @Override
    protected double computePrefHeight(double width) {
        return getInsets().getTop() + getInsets().getBottom() + height(0, rows.size());
    }

    @Override
    protected double computeMinHeight(double width) {
        return KEY_HEIGHT * 2 + GAP;
    }
}
