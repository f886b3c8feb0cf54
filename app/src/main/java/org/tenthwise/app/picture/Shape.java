package org.tenthwise.app.picture;

import java.util.List;

/** What a pen can follow. */
public sealed interface Shape {

    /** Straight lines from point to point; two points or more. */
    record Polyline(List<Point> points, boolean closed) implements Shape {
        public Polyline {
            points = List.copyOf(points);
        }
    }

    record Circle(Point centre, double radius) implements Shape {}

    /** The least upright rectangle around the shape. */
    default Box bounds() {
        if (this instanceof Polyline chain) {
            return new Box(
                    chain.points().stream().mapToDouble(Point::x).min().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::y).min().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::x).max().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::y).max().orElseThrow());
        }
        Circle circle = (Circle) this;
        Point centre = circle.centre();
        return new Box(centre.x(), centre.y(), centre.x(), centre.y()).grown(circle.radius());
    }
}
