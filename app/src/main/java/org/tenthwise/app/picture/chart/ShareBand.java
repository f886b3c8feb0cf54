package org.tenthwise.app.picture.chart;

import java.util.List;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.app.picture.VerdictShape;

/** The parts of one characteristic between its limits, the last one made the larger. */
public record ShareBand(SharePicture.ShareRow row, String spoken) implements Picture {

    private static final double MOST = 135;

    @Override
    public void draw(Drawing drawing) {
        draw(drawing, row, drawing.frame().box());
    }

    /** Of a place in per cent. */
    static double x(Box scale, double percent) {
        return scale.centreX() + percent / MOST * scale.width() / 2;
    }

    static void draw(Drawing drawing, SharePicture.ShareRow row, Box box) {
        if (row.marks().isEmpty()) {
            return;
        }
        double inset = Math.min(10, box.height() * 0.16);
        double from = x(box, row.both() ? -100 : 0);
        double to = x(box, 100);
        double top = box.top() + inset;
        double bottom = box.bottom() - inset;
        drawing.area(new Box(from, top, to, bottom).corners(), Role.ZONE);
        drawing.down(x(box, 0), top, bottom, row.both() ? Stroke.CENTRE : Stroke.THIN, Role.LINE);
        if (row.both()) {
            drawing.down(from, top, bottom, Stroke.OUTLINE, Role.INK);
        }
        drawing.down(to, top, bottom, Stroke.OUTLINE, Role.INK);
        for (int i = 0; i < row.marks().size(); i++) {
            mark(
                    drawing,
                    row.marks().get(i),
                    box.centreY(),
                    box,
                    i == row.marks().size() - 1);
        }
    }

    private static void mark(Drawing drawing, SharePicture.ShareMark mark, double y, Box scale, boolean last) {
        double radius = drawing.ruled(last ? 10 : 5.5);
        double at = x(scale, Math.max(-MOST, Math.min(MOST, mark.percent())));
        double edge = radius + 10;
        double x = Math.max(scale.left() + edge, Math.min(scale.right() - edge, at));
        Point spot = new Point(x, y);
        if (last) {
            drawing.disc(spot, radius + 2, drawing.frame().ground());
        }
        VerdictShape.draw(drawing, mark.verdict(), spot, radius);
        if (Math.abs(mark.percent()) > MOST) {
            double side = Math.signum(mark.percent());
            double foot = x + side * (radius + 2);
            drawing.area(
                    List.of(new Point(foot, y - 5), new Point(foot, y + 5), new Point(foot + side * 8, y)), Role.INK);
        }
    }
}
