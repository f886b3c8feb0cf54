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
            if (new Leg(points.get(i - 1), points.get(i)).cuts(box)) {
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
}
