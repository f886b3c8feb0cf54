package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** A row of a table, as high as its highest cell; one higher than a leaf goes on on the next. */
final class Row {

    private static final double LEADING = 15;
    private static final double PADDING = 3;

    /** Something drawn in a row besides text. */
    interface Ornament {
        /** @param middle of the row, from the top of the leaf */
        void draw(Drawing drawing, double middle);
    }

    private record Line(Label label, boolean struck) {}

    private record Cell(Column column, List<Line> lines) {}

    private final Wrapping wrapping;
    private final List<Cell> cells = new ArrayList<>();
    private final List<Ornament> ornaments = new ArrayList<>();

    Row(Wrapping wrapping) {
        this.wrapping = wrapping;
    }

    /** Adds wrapped text to a column, under what is there already. */
    Row text(Column column, String text, Style style) {
        return lines(column, text, style, false);
    }

    /** Text with a line through it, still to be read. */
    Row struck(Column column, String text, Style style) {
        return lines(column, text, style, true);
    }

    Row ornament(Ornament ornament) {
        ornaments.add(ornament);
        return this;
    }

    private Row lines(Column column, String text, Style style, boolean struck) {
        List<Line> lines = wrapping.lines(text, style, column.width()).stream()
                .map(line -> new Line(style.label(line), struck))
                .toList();
        cells.stream()
                .filter(cell -> cell.column().equals(column))
                .findFirst()
                .ifPresentOrElse(
                        cell -> cell.lines().addAll(lines), () -> cells.add(new Cell(column, new ArrayList<>(lines))));
        return this;
    }

    double height() {
        return lines() * LEADING + 2 * PADDING;
    }

    private int lines() {
        return Math.max(
                1, cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(0));
    }

    /** Puts the row down, with a thin rule under it. */
    void into(PageFlow flow, Runnable head) {
        if (height() <= flow.room()) {
            slice(flow, 0, lines());
            return;
        }
        if (height() <= flow.wholeRoom() / 2) {
            flow.turn();
            head.run();
            slice(flow, 0, lines());
            return;
        }
        int done = 0;
        while (done < lines()) {
            int fitting = (int) ((flow.room() - 2 * PADDING) / LEADING);
            if (fitting < 1) {
                flow.turn();
                head.run();
                fitting = (int) ((flow.room() - 2 * PADDING) / LEADING);
            }
            int next = Math.min(lines() - done, Math.max(1, fitting));
            slice(flow, done, next);
            done += next;
        }
    }

    private void slice(PageFlow flow, int from, int count) {
        double top = flow.y() + PADDING;
        boolean whole = from == 0 && count == lines();
        for (Cell cell : cells) {
            double down = whole ? (count - cell.lines().size()) * LEADING / 2 : 0;
            for (int i = from; i < Math.min(from + count, cell.lines().size()); i++) {
                Line line = cell.lines().get(i);
                double middle = top + down + (i - from + 0.5) * LEADING;
                flow.leaf().add(drawing -> draw(drawing, cell.column(), line, middle));
            }
        }
        if (from == 0) {
            double middle = top + count * LEADING / 2;
            ornaments.forEach(ornament -> flow.leaf().add(drawing -> ornament.draw(drawing, middle)));
        }
        flow.down(count * LEADING + 2 * PADDING);
        flow.rule(Strokes.THIN, Role.RULE);
    }

    private static void draw(Drawing drawing, Column column, Line line, double middle) {
        Point at = new Point(column.toRight() ? column.right() : column.left(), middle);
        drawing.text(line.label(), at, column.toRight() ? Anchor.RIGHT : Anchor.LEFT);
        if (line.struck()) {
            double width = drawing.width(line.label());
            double left = column.toRight() ? column.right() - width : column.left();
            drawing.across(middle, left - 2, left + width + 2, Strokes.THIN, Role.INK);
        }
    }
}
