package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Role;

/** A row of a table, as high as its highest cell; one higher than a leaf goes on on the next. */
final class Row {

    private static final double LEADING = 12.5;
    private static final double PADDING = 1.25;

    /** Something drawn in a row besides text. */
    interface Ornament {
        /** @param middle of the first line of the row, from the top of the leaf */
        void draw(Drawing drawing, double middle);
    }

    private record Line(List<RunIn.Piece> pieces, boolean struck) {}

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

    /** Wrapped text under all that is there. */
    Row under(Column column, String text, Style style) {
        int above = lines();
        add(column, Collections.nCopies(above, new Line(List.of(), false)));
        return text(column, text, style);
    }

    Row ornament(Ornament ornament) {
        ornaments.add(ornament);
        return this;
    }

    /** The same for a text of several letterings. */
    Row text(Column column, RunIn text) {
        return add(
                column,
                text.lines(column.width()).stream()
                        .map(pieces -> new Line(pieces, false))
                        .toList());
    }

    private Row lines(Column column, String text, Style style, boolean struck) {
        return add(
                column,
                wrapping.lines(text, style, column.width()).stream()
                        .map(line -> new Line(List.of(piece(column, line, style)), struck))
                        .toList());
    }

    private RunIn.Piece piece(Column column, String line, Style style) {
        return new RunIn.Piece(line, style, column.toRight() ? column.width() - wrapping.width(line, style) : 0);
    }

    private Row add(Column column, List<Line> lines) {
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

    /** Puts the whole row down at a height of the leaf in hand, without moving on, with a thin rule under it. */
    void at(PageFlow flow, double height, double left, double right) {
        cells(flow, height + PADDING, 0, lines());
        double under = height + height();
        flow.leaf().add(drawing -> drawing.across(under, left, right, Strokes.THIN, Role.RULE));
    }

    private void slice(PageFlow flow, int from, int count) {
        cells(flow, flow.y() + PADDING, from, count);
        flow.down(count * LEADING + 2 * PADDING);
        flow.rule(Strokes.THIN, Role.RULE);
    }

    private void cells(PageFlow flow, double top, int from, int count) {
        for (Cell cell : cells) {
            for (int i = from; i < Math.min(from + count, cell.lines().size()); i++) {
                Line line = cell.lines().get(i);
                double middle = top + (i - from + 0.5) * LEADING;
                flow.leaf().add(drawing -> draw(drawing, cell.column(), line, middle));
            }
        }
        if (from == 0) {
            double middle = top + LEADING / 2;
            ornaments.forEach(ornament -> flow.leaf().add(drawing -> ornament.draw(drawing, middle)));
        }
    }

    private static void draw(Drawing drawing, Column column, Line line, double middle) {
        line.pieces().forEach(piece -> piece.draw(drawing, column.left(), middle));
        if (line.struck()) {
            RunIn.Piece first = line.pieces().get(0);
            RunIn.Piece last = line.pieces().get(line.pieces().size() - 1);
            double left = column.left() + first.left();
            double right =
                    column.left() + last.left() + drawing.width(last.style().label(last.text()));
            drawing.across(middle, left - 2, right + 2, Strokes.THIN, Role.INK);
        }
    }
}
