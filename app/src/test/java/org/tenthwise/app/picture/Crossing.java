package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Whether a line runs through a box. */
final class Crossing {

    private static final int CHORDS = 72;

    private Crossing() {}

    static boolean of(Shape shape, Box box) {
        List<Point> points = points(shape);
        for (int i = 1; i < points.size(); i++) {
            if (of(points.get(i - 1), points.get(i), box)) {
                return true;
            }
        }
        return false;
    }

    private static List<Point> points(Shape shape) {
        if (shape instanceof Shape.Polyline chain) {
            List<Point> points = new ArrayList<>(chain.points());
            if (chain.closed()) {
                points.add(points.get(0));
            }
            return points;
        }
        Shape.Circle circle = (Shape.Circle) shape;
        return IntStream.rangeClosed(0, CHORDS)
                .mapToObj(i -> circle.centre().polar(circle.radius(), 360.0 * i / CHORDS))
                .toList();
    }

    /** The part of the line between the left and the right edge that is also between the upper and the lower one. */
    private static boolean of(Point from, Point to, Box box) {
        double[] part = {0, 1};
        return cut(part, from.x(), to.x(), box.left(), box.right())
                && cut(part, from.y(), to.y(), box.top(), box.bottom());
    }

    private static boolean cut(double[] part, double from, double to, double least, double most) {
        if (from == to) {
            return from > least && from < most;
        }
        double one = (least - from) / (to - from);
        double other = (most - from) / (to - from);
        part[0] = Math.max(part[0], Math.min(one, other));
        part[1] = Math.min(part[1], Math.max(one, other));
        return part[0] < part[1];
    }
}
