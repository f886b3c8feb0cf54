package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.verdict.VerdictKind;

/** The shapes a verdict is known by, told apart without their colours. */
public final class VerdictShape {

    private VerdictShape() {}

    /** @param radius half the height of the shape */
    public static void draw(Drawing drawing, VerdictKind standing, Point centre, double radius) {
        switch (standing) {
            case PASS -> drawing.disc(centre, radius, Role.PASS);
            case FAIL -> fail(drawing, centre, radius);
            case CUT_AGAIN -> cutAgain(drawing, centre, radius);
            case UNPROVEN -> unproven(drawing, centre, radius);
            case OPEN -> open(drawing, centre, radius, Role.OPEN);
        }
    }

    /** The ring of an open check, in the colour of the one in hand where it is that. */
    static void open(Drawing drawing, Point centre, double radius, Role role) {
        Stroke stroke = line(drawing, radius * 0.26);
        drawing.circle(centre, radius * 0.87, stroke, role);
    }

    private static void fail(Drawing drawing, Point centre, double radius) {
        double half = 0.92 * radius;
        drawing.area(
                new Box(centre.x(), centre.y(), centre.x(), centre.y())
                        .grown(half)
                        .corners(),
                Role.FAIL);
        drawing.area(
                new Box(
                                centre.x() - 0.62 * radius,
                                centre.y() - 0.19 * radius,
                                centre.x() + 0.62 * radius,
                                centre.y() + 0.19 * radius)
                        .corners(),
                drawing.frame().ground());
    }

    /** Up, over, and down on to the work. */
    private static void cutAgain(Drawing drawing, Point centre, double radius) {
        Stroke stroke = line(drawing, radius * 0.24);
        double right = centre.x() + 0.62 * radius;
        double left = centre.x() - 0.34 * radius;
        double top = centre.y() - 0.86 * radius;
        drawing.chain(
                List.of(
                        new Point(right, centre.y() + 0.1 * radius),
                        new Point(right, top),
                        new Point(left, top),
                        new Point(left, centre.y() - 0.05 * radius)),
                stroke,
                Role.CUTFILL);
        drawing.head(
                new Point(left, top),
                new Point(left, centre.y() + 0.66 * radius),
                0.75 * radius,
                0.95 * radius,
                Role.CUTFILL);
        drawing.across(
                centre.y() + 0.86 * radius,
                centre.x() - radius,
                centre.x() + radius,
                line(drawing, radius * 0.27),
                Role.CUTFILL);
    }

    private static void unproven(Drawing drawing, Point centre, double radius) {
        double middle = radius * 0.91;
        List<Point> left = new ArrayList<>();
        for (int degrees = 180; degrees <= 360; degrees += 6) {
            left.add(centre.polar(middle, degrees));
        }
        drawing.area(left, Role.UNPROVEN);
        drawing.circle(centre, middle, line(drawing, radius * 0.18), Role.UNPROVEN);
    }

    /** A stroke of {@code width} pixels whatever the frame's line weights are. */
    private static Stroke line(Drawing drawing, double width) {
        return Stroke.solid(width).times(1 / drawing.frame().lineScale());
    }
}
