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

    /**
     * Part of a circle.
     *
     * @param from degrees clockwise from straight up
     * @param sweep degrees, clockwise where positive, within ±360
     */
    record Arc(Point centre, double radius, double from, double sweep) implements Shape {}

    /** The least upright rectangle around the shape; of an arc, around its circle. */
    default Box bounds() {
        if (this instanceof Polyline chain) {
            return new Box(
                    chain.points().stream().mapToDouble(Point::x).min().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::y).min().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::x).max().orElseThrow(),
                    chain.points().stream().mapToDouble(Point::y).max().orElseThrow());
        }
        Circle circle = this instanceof Arc arc ? new Circle(arc.centre(), arc.radius()) : (Circle) this;
        Point centre = circle.centre();
        return new Box(centre.x(), centre.y(), centre.x(), centre.y()).grown(circle.radius());
    }
}
