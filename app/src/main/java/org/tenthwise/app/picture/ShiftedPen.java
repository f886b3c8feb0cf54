package org.tenthwise.app.picture;

/** Draws with another pen, everything moved: a picture on a page. */
record ShiftedPen(Pen pen, double dx, double dy) implements Pen {

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        pen.stroke(moved(shape), stroke, role);
    }

    @Override
    public void fill(Shape shape, Role role) {
        pen.fill(moved(shape), role);
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        pen.text(face, text, moved(start), size, role);
    }

    private Shape moved(Shape shape) {
        if (shape instanceof Shape.Polyline chain) {
            return new Shape.Polyline(chain.points().stream().map(this::moved).toList(), chain.closed());
        }
        Shape.Circle circle = (Shape.Circle) shape;
        return new Shape.Circle(moved(circle.centre()), circle.radius());
    }

    private Point moved(Point point) {
        return point.plus(dx, dy);
    }
}
