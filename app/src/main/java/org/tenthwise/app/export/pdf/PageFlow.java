package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.verdict.VerdictKind;

/** Fills leaves from top to bottom and turns the page where something does not fit any more. */
final class PageFlow {

    static final double LEFT = 48;
    static final double RIGHT = 746;
    static final double WIDTH = RIGHT - LEFT;

    private final Wrapping wrapping;
    private final double top;
    private final double bottom;
    private final List<Page> leaves = new ArrayList<>();
    private double y;

    /**
     * Room between {@code top} and {@code bottom} is the flow's; the rest of a leaf is for head and foot.
     *
     * @param first where the first leaf begins, which has a head of its own
     */
    PageFlow(Wrapping wrapping, double first, double top, double bottom) {
        this.wrapping = wrapping;
        this.top = top;
        this.bottom = bottom;
        turn();
        this.y = first;
    }

    PageFlow(Wrapping wrapping, double top, double bottom) {
        this(wrapping, top, top, bottom);
    }

    List<Page> leaves() {
        return leaves;
    }

    Wrapping wrapping() {
        return wrapping;
    }

    /** Where the next thing goes. */
    double y() {
        return y;
    }

    double room() {
        return bottom - y;
    }

    /** Room of a leaf with nothing on it. */
    double wholeRoom() {
        return bottom - top;
    }

    Page leaf() {
        return leaves.get(leaves.size() - 1);
    }

    /** Begins the next leaf. */
    void turn() {
        leaves.add(new Page());
        y = top;
    }

    /** Turns the page unless there is room for {@code height}, or no more room on a fresh one. */
    void need(double height) {
        if (height > room() && y > top) {
            turn();
        }
    }

    void down(double distance) {
        y += distance;
    }

    /** Wrapped text, a line after the other, over as many leaves as it takes. */
    void text(String text, Style style, double left, double width) {
        for (String line : wrapping.lines(text, style, width)) {
            need(style.leading());
            write(line, style, left, y);
            y += style.leading();
        }
    }

    /** One line on the leaf in hand, its capitals from {@code at} downwards, without moving on. */
    void write(String line, Style style, double left, double at) {
        leaf().add(drawing -> drawing.text(style.label(line), new Point(left, at + gap(style)), Anchor.LEFT_BELOW));
    }

    void writeToRight(String line, Style style, double right, double at) {
        leaf().add(drawing -> drawing.text(style.label(line), new Point(right, at + gap(style)), Anchor.RIGHT_BELOW));
    }

    /** What stands over columns, each on the side its text stands to, as high as the longest needs; a line under it. */
    void head(List<Column> columns, UnaryOperator<String> words, double above, Stroke line) {
        List<List<String>> heads = columns.stream()
                .map(column -> wrapping.lines(words.apply(column.head()), Style.SMALL, column.width()))
                .toList();
        int most = heads.stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < most; i++) {
            for (int column = 0; column < columns.size(); column++) {
                List<String> lines = heads.get(column);
                int at = lines.size() - most + i;
                if (at >= 0) {
                    head(columns.get(column), lines.get(at));
                }
            }
            down(Style.SMALL.leading());
        }
        down(above);
        rule(line, Role.INK);
    }

    private void head(Column column, String line) {
        if (column.toRight()) {
            writeToRight(line, Style.SMALL, column.right(), y);
        } else {
            write(line, Style.SMALL, column.left(), y);
        }
    }

    /** A heading over the whole width. */
    void heading(String title) {
        down(14);
        rule(Strokes.THICK, Role.INK);
        down(5);
        text(title, Style.NAME, LEFT, WIDTH);
        down(4);
    }

    /** A verdict before the first line of what is written next. */
    void shape(VerdictKind standing, double right, Style line, double radius) {
        double middle = y + line.leading() / 2;
        leaf().add(drawing -> VerdictShape.draw(drawing, standing, new Point(LEFT + right, middle), radius));
    }

    /** A line over the whole width. */
    void rule(Stroke stroke, Role role) {
        double at = y;
        leaf().add(drawing -> rule(drawing, at, stroke, role));
    }

    static void rule(Drawing drawing, double at, Stroke stroke, Role role) {
        drawing.across(at, LEFT, RIGHT, stroke, role);
    }

    /** From the upper edge of a line of text to its capitals, so that they stand in its middle. */
    static double gap(Style style) {
        return (style.leading() - 0.711 * style.size()) / 2;
    }
}
