package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** A page of the record, drawn whole in whatever room there is, or as wide as that, a part after the other. */
public final class PagePicture implements Picture {

    /** Two parts have as much of the page in common at the least, so that no line is cut in both. */
    private static final double IN_COMMON = 24;

    private final Page page;
    private final Paper paper;
    private final String spoken;

    PagePicture(Page page, Paper paper, String spoken) {
        this.page = page;
        this.paper = paper;
        this.spoken = spoken;
    }

    @Override
    public String spoken() {
        return spoken;
    }

    @Override
    public void draw(Drawing drawing) {
        double width = drawing.frame().width();
        double height = drawing.frame().height();
        double scale = Math.min(width / paper.width(), height / paper.height());
        draw(drawing, scale, new Point((width - paper.width() * scale) / 2, (height - paper.height() * scale) / 2));
    }

    /** In how many parts it is read where it is as wide as the room. */
    public int parts(double width, double height) {
        double seen = seen(width, height);
        return seen >= paper.height()
                ? 1
                : 1 + (int) Math.ceil((paper.height() - seen) / Math.max(IN_COMMON, seen - IN_COMMON));
    }

    /** How much of its height is seen at once. */
    private double seen(double width, double height) {
        return height * paper.width() / width;
    }

    /** A part of it, as wide as the room. */
    public Picture part(int number) {
        return new Picture() {
            @Override
            public void draw(Drawing drawing) {
                double width = drawing.frame().width();
                double height = drawing.frame().height();
                double scale = width / paper.width();
                int parts = parts(width, height);
                double hidden = Math.max(0, paper.height() - seen(width, height));
                double above = parts == 1 ? 0 : hidden * Math.min(number, parts - 1) / (parts - 1);
                PagePicture.this.draw(drawing, scale, new Point(0, -above * scale));
            }

            @Override
            public String spoken() {
                return spoken;
            }
        };
    }

    private void draw(Drawing drawing, double scale, Point corner) {
        Drawing sheet = drawing.scaled(scale, corner, paper.frame());
        sheet.area(new Box(0, 0, paper.width(), paper.height()).corners(), Role.SHEET);
        page.draw(drawing.scaled(scale, corner.plus(paper.left() * scale, 0), paper.frame()));
        sheet.line(new Point(0, paper.height()), new Point(paper.width(), paper.height()), Stroke.RULE, Role.RULE);
    }
}
