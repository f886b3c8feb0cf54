package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** Pages turned on their side, filled from top to bottom, each with the head of the form it belongs to. */
final class FormSheet {

    static final double MARGIN = 40;
    private static final double TOP = 30;
    private static final double FOOT = 56;

    private final Wrapping wrapping;
    private final Paper paper;
    private final List<Page> pages = new ArrayList<>();
    private Runnable head = () -> {};
    private double y;

    FormSheet(Wrapping wrapping, Paper paper) {
        this.wrapping = wrapping;
        this.paper = paper;
    }

    Wrapping wrapping() {
        return wrapping;
    }

    List<Page> pages() {
        return pages;
    }

    /** In pixels, 96 to the inch, as the height. */
    double width() {
        return paper.height();
    }

    double height() {
        return paper.width();
    }

    double right() {
        return width() - MARGIN;
    }

    /** Between the margins. */
    double across() {
        return right() - MARGIN;
    }

    double bottom() {
        return height() - FOOT;
    }

    Frame frame() {
        return new Frame(width(), height(), 1, 1, Role.SHEET);
    }

    double y() {
        return y;
    }

    void down(double distance) {
        y += distance;
    }

    Page page() {
        return pages.get(pages.size() - 1);
    }

    /** Begins a form on a page of its own. */
    void begin(Runnable headOfTheForm) {
        head = headOfTheForm;
        turn();
    }

    /** Begins the next page of the form. */
    void turn() {
        pages.add(new Page());
        y = TOP;
        head.run();
    }

    /** Turns the page unless there is room for that height. */
    void need(double height) {
        if (y + height > bottom()) {
            turn();
        }
    }

    /** Wrapped text over the whole width. */
    void text(String text, Style style) {
        for (String line : wrapping.lines(text, style, across())) {
            need(style.leading());
            write(line, style, MARGIN, y);
            y += style.leading();
        }
    }

    /** One line, its capitals from {@code at} downwards. */
    void write(String line, Style style, double left, double at) {
        write(page(), line, style, left, at);
    }

    static void write(Page page, String line, Style style, double left, double at) {
        page.add(drawing ->
                drawing.text(style.label(line), new Point(left, at + PageFlow.gap(style)), Anchor.LEFT_BELOW));
    }

    void rule(Stroke stroke) {
        double at = y;
        page().add(drawing -> drawing.across(at, MARGIN, right(), stroke, Role.INK));
    }
}
