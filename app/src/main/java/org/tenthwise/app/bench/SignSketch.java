package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** Draws in the box of a sign. */
public record SignSketch(Drawing drawing, double scale, double left, double top) {

    private static final Stroke THICK = Stroke.OUTLINE;
    private static final int ARC_STEPS = 36;

    void thick(Role role, double... places) {
        drawing.chain(points(places), THICK, role);
    }

    void thin(Role role, double... places) {
        drawing.chain(points(places), Stroke.THIN, role);
    }

    void area(Role role, double... places) {
        drawing.area(points(places), role);
    }

    void ring(double x, double y, double radius) {
        drawing.disc(points(x, y).get(0), radius * scale, drawing.frame().ground());
        drawing.circle(points(x, y).get(0), radius * scale, THICK, Role.ACCENT);
    }

    void thinRing(double x, double y, double radius) {
        drawing.circle(points(x, y).get(0), radius * scale, THICK, Role.LINE);
    }

    void dot(double x, double y, double radius) {
        drawing.disc(points(x, y).get(0), radius * scale, Role.ACCENT);
    }

    /** From one angle on to the other, in degrees clockwise from the right. */
    void arc(double x, double y, double radius, double from, double to) {
        double[] places = new double[2 * ARC_STEPS + 2];
        for (int i = 0; i <= ARC_STEPS; i++) {
            double at = Math.toRadians(from + (to - from) * i / ARC_STEPS);
            places[2 * i] = x + radius * Math.cos(at);
            places[2 * i + 1] = y + radius * Math.sin(at);
        }
        thick(Role.LINE, places);
    }

    private List<Point> points(double... places) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < places.length; i += 2) {
            points.add(new Point(left + places[i] * scale, top + places[i + 1] * scale));
        }
        return points;
    }
}
