package org.tenthwise.app.picture;

/** Draws with another pen, everything larger or smaller by a factor and then moved: a page on a screen. */
record ScaledPen(Pen pen, double scale, Point corner) implements Pen {

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        pen.stroke(placed(shape), stroke.times(scale), role);
    }

    @Override
    public void fill(Shape shape, Role role) {
        pen.fill(placed(shape), role);
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        pen.text(face, text, placed(start), size * scale, role);
    }

    private Shape placed(Shape shape) {
        if (shape instanceof Shape.Polyline chain) {
            return new Shape.Polyline(chain.points().stream().map(this::placed).toList(), chain.closed());
        }
        Shape.Circle circle = (Shape.Circle) shape;
        return new Shape.Circle(placed(circle.centre()), circle.radius() * scale);
    }

    private Point placed(Point point) {
        return new Point(corner.x() + point.x() * scale, corner.y() + point.y() * scale);
    }
}
