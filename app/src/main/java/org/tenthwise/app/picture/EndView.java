package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;

/**
 * A bore seen along its axis, small, with each way it is read across as a line through it: the two halves of the
 * section beside it are at different angles, and no two sides of one cut.
 */
final class EndView {

    private static final double RADIUS = 19;
    /** How far a way stands out of the bore, towards its angle. */
    private static final double OUT = 6;

    private static final double GAP = 3;
    private static final double TEXT = 18;

    private final Drawing drawing;
    private final List<BigDecimal> angles;
    private final double radius;

    /** @param angles degrees clockwise from the top, as the end is seen */
    EndView(Drawing drawing, List<BigDecimal> angles) {
        this.drawing = drawing;
        this.angles = List.copyOf(angles);
        this.radius = drawing.lettered(RADIUS);
    }

    /** Letters and all, across. */
    double width() {
        return reach().right() - reach().left();
    }

    private Box reach() {
        Box reach = new Box(-radius, -radius, radius, radius);
        for (BigDecimal angle : angles) {
            Box box = box(angle, new Point(0, 0));
            reach = new Box(
                    Math.min(reach.left(), box.left()),
                    Math.min(reach.top(), box.top()),
                    Math.max(reach.right(), box.right()),
                    Math.max(reach.bottom(), box.bottom()));
        }
        return reach;
    }

    /** Of the letters of an angle, clear of the line towards them. */
    private Box box(BigDecimal angle, Point centre) {
        Label label = label(angle);
        double along = Math.toRadians(angle.doubleValue());
        double half = Math.abs(Math.sin(along)) * drawing.width(label) / 2
                + Math.abs(Math.cos(along)) * drawing.height(label) / 2;
        Point middle = centre.polar(radius + OUT + GAP + half, angle.doubleValue());
        return drawing.boxOf(label, middle, Anchor.CENTRE);
    }

    private static Label label(BigDecimal angle) {
        return Label.of(angle.toPlainString() + "°", TEXT, Role.INK);
    }

    /** @param left where it begins, on the line of the axis at {@code middle} */
    void draw(double left, double middle) {
        Point centre = new Point(left - reach().left(), middle);
        drawing.circle(centre, radius, Stroke.OUTLINE, Role.LINE);
        for (BigDecimal angle : angles) {
            double degrees = angle.doubleValue();
            drawing.line(centre.polar(-radius, degrees), centre.polar(radius + OUT, degrees), Stroke.THIN, Role.LINE);
            Box box = box(angle, centre);
            drawing.text(label(angle), new Point(box.centreX(), box.centreY()), Anchor.CENTRE);
        }
    }
}
