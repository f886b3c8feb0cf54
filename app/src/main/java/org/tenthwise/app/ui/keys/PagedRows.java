package org.tenthwise.app.ui.keys;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/**
 * Rows under one another, as many as there is room for, with two keys below for the rows before and after: nothing is
 * dragged. Where all rows fit, the keys are not there. Rows are as high as they need to be; none is cut. However long
 * the list, only the rows that are measured for the page lie on the screen, and a row can be made when it comes to
 * that.
 */
public final class PagedRows extends Region {

    private final Key earlier;
    private final Key later;
    private final double between;
    private final TreeMap<Integer, Region> laid = new TreeMap<>();
    private final Set<Integer> measured = new HashSet<>();
    private IntFunction<? extends Region> rows = place -> new Region();
    private int count;
    private int first;
    private int shown;
    private int wanted;
    private boolean revealing;
    private boolean turnedElsewhere;
    private Runnable lastSeen = () -> {};

    public PagedRows(Words words) {
        this(words, ScreenSizes.GAP);
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

    /**
     * Puts the two keys into another line, so that rows have all the height; they are seen where there is something to
     * turn.
     */
    public void turnAt(Pane line) {
        turnedElsewhere = true;
        for (Key key : List.of(earlier, later)) {
            key.setMinWidth(ScreenSizes.KEY);
            key.setVisible(false);
            key.managedProperty().bind(key.visibleProperty());
            line.getChildren().add(key);
        }
    }

    /** Shows other rows, from the first that leaves {@link #reveal} kept. */
    public void show(List<? extends Region> others) {
        show(others.size(), List.copyOf(others)::get);
    }

    /** @param row makes the row at a place from 0 to {@code number} - 1, each time it comes to be measured */
    public void show(int number, IntFunction<? extends Region> row) {
        count = number;
        rows = row;
        laid.clear();
        getChildren().removeIf(child -> child != earlier && child != later);
        first = Math.max(0, Math.min(first, count - 1));
        wanted = Math.min(wanted, Math.max(0, count - 1));
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
        double room = room(true);
        int start = first;
        while (start > 0 && fit(start - 1, first, room)) {
            start--;
        }
        first = start == first ? Math.max(0, start - 1) : start;
        requestLayout();
    }

    private void pageOn() {
        first = Math.min(first + Math.max(1, shown), lastStart(room(true)));
        requestLayout();
    }

    /** The latest first row at which the last row is still to be seen and the page is full. */
    private int lastStart(double room) {
        int start = Math.max(0, count - 1);
        while (start > 0 && fit(start - 1, count, room)) {
            start--;
        }
        return start;
    }

    private double innerWidth() {
        return getWidth() - getInsets().getLeft() - getInsets().getRight();
    }

    /** Height there is for rows. */
    private double room(boolean keys) {
        Insets in = getInsets();
        return getHeight()
                - in.getTop()
                - in.getBottom()
                - (keys && !turnedElsewhere ? ScreenSizes.PAGE_KEY + ScreenSizes.GAP : 0);
    }

    private boolean fit(int from, int to, double room) {
        double height = 0;
        for (int i = from; i < to; i++) {
            height += heightOf(i) + (i > from ? between : 0);
            if (height > room) {
                return false;
            }
        }
        return true;
    }

    /**
     * Stays where it is if the wanted row is to be seen there with the row after it; otherwise has a row or two before
     * it.
     */
    private int revealed(int start, double room) {
        int after = Math.min(wanted + 1, count - 1);
        if (wanted >= start && fit(start, after + 1, room)) {
            return start;
        }
        int before = Math.max(0, wanted - 2);
        while (before < wanted && !fit(before, after + 1, room)) {
            before++;
        }
        return before == 0 ? 0 : Math.min(before, lastStart(room));
    }

    /** The height at which no row is on another page. */
    public double heightOfAll(double width) {
        return heightOfFirst(count, width);
    }

    /** The height at which the first {@code number} rows, or all if there are fewer, are to be seen. */
    public double heightOfFirst(int number, double width) {
        Insets in = getInsets();
        int most = Math.min(number, count);
        double inner = width - in.getLeft() - in.getRight();
        double height = in.getTop() + in.getBottom() + between * Math.max(0, most - 1);
        for (int i = 0; i < most; i++) {
            height += heightOf(i, inner);
        }
        return height;
    }

    private double heightOf(int place) {
        return heightOf(place, innerWidth());
    }

    private double heightOf(int place, double width) {
        measured.add(place);
        Region row = laid.get(place);
        if (row == null) {
            row = rows.apply(place);
            getChildren().add(laid.headMap(place).size(), row);
            laid.put(place, row);
            row.applyCss();
        }
        return Math.ceil(Math.max(row.minHeight(width), row.prefHeight(width)));
    }

    @Override
    protected void layoutChildren() {
        measured.clear();
        boolean keys = !fit(0, count, room(false));
        double room = room(keys);
        first = first == 0 ? 0 : Math.min(first, lastStart(room));
        if (revealing) {
            first = revealed(first, room);
            revealing = false;
        }
        layRows(room);
        layKey(earlier, keys, 0, first == 0);
        layKey(later, keys, 1, first + shown >= count);
        if (first + shown >= count) {
            lastSeen.run();
        }
    }

    private void layRows(double room) {
        Insets in = getInsets();
        double top = 0;
        shown = 0;
        while (first + shown < count) {
            double height = heightOf(first + shown);
            if (top + height > room + 0.5) {
                break;
            }
            Region row = laid.get(first + shown);
            layoutInArea(row, in.getLeft(), in.getTop() + top, innerWidth(), height, 0, HPos.LEFT, VPos.TOP);
            top += height + between;
            shown++;
        }
        getChildren()
                .removeAll(laid.entrySet().stream()
                        .filter(row -> !measured.contains(row.getKey()))
                        .map(row -> row.getValue())
                        .toList());
        laid.keySet().retainAll(measured);
        laid.forEach((place, row) -> row.setVisible(place >= first && place < first + shown));
    }

    private void layKey(Key key, boolean visible, int column, boolean atTheEnd) {
        Insets in = getInsets();
        double width = Math.floor((innerWidth() - ScreenSizes.GAP) / 2);
        double x = in.getLeft() + column * (width + ScreenSizes.GAP);
        double y = getHeight() - in.getBottom() - ScreenSizes.PAGE_KEY;
        key.setVisible(visible);
        key.setDisable(atTheEnd);
        if (turnedElsewhere) {
            return;
        }
        layoutInArea(key, x, y, width, ScreenSizes.PAGE_KEY, 0, HPos.CENTER, VPos.CENTER);
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return ScreenSizes.PAGE_KEY * 2 + ScreenSizes.GAP;
    }
}
