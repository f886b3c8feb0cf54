package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.Stream;

/** A {@link WorkedSketch} in its room: the metal hatched, pins and rolls in the accent, what was read at its line. */
final class WorkedSection {

    private static final double TEXT = 20;
    private static final double EDGE = 14;
    private static final double OVER = 6;
    private static final Stroke PIN = Stroke.solid(2.2);

    private final WorkedSketch sketch;
    private final Drawing drawing;
    private final Box room;
    private final Box whole;
    private final double scale;

    WorkedSection(WorkedSketch sketch, Drawing drawing, Box room) {
        this.sketch = sketch;
        this.drawing = drawing;
        this.room = room;
        this.whole = sketch.bounds();
        double air = EDGE + drawing.lettered(TEXT) / 2;
        this.scale = Math.min((room.width() - 2 * air) / whole.width(), (room.height() - 2 * air) / whole.height());
    }

    void draw() {
        sketch.metal().forEach(part -> {
            List<List<Point>> rings = part.stream().map(this::placed).toList();
            drawing.metal(rings);
            rings.forEach(ring -> drawing.ring(ring, Stroke.OUTLINE, Role.LINE));
        });
        sketch.neighbours().forEach(part -> {
            drawing.area(placed(part), drawing.frame().ground());
            drawing.ring(placed(part), Stroke.NEIGHBOUR, Role.LINE);
        });
        sketch.pins().forEach(this::pin);
        sketch.axes().forEach(axis -> drawing.chain(placed(axis), Stroke.CENTRE, Role.LINE));
        sketch.dimensions().forEach(this::dimension);
    }

    private void pin(WorkedSketch.Pin pin) {
        Point centre = at(pin.centre());
        double radius = pin.radius() * scale;
        drawing.disc(centre, radius, drawing.frame().ground());
        drawing.circle(centre, radius, PIN, Role.ACCENT);
        double cross = Math.min(6, radius * 0.45);
        drawing.line(centre.plus(-cross, 0), centre.plus(cross, 0), Stroke.THIN, Role.ACCENT);
        drawing.line(centre.plus(0, -cross), centre.plus(0, cross), Stroke.THIN, Role.ACCENT);
    }

    private void dimension(WorkedSketch.SketchedSize line) {
        Point from = at(line.from());
        Point to = at(line.to());
        extension(at(line.edge()), from);
        extension(at(line.otherEdge()), to);
        Role role = line.figure().isPresent() ? Role.ACCENT : Role.LINE;
        Box drawn = drawing.dimension(from, to, role).bounds();
        line.figure().ifPresent(figure -> {
            Label label = Label.of(figure, TEXT, Role.ACCENT).bold().onGround();
            double half = drawing.width(label) / 2 + 2;
            boolean upright = Math.abs(from.x() - to.x()) < 1;
            double free = upright ? drawn.height() - 2 * drawing.height(label) : drawn.width() - 3 * half;
            double beside = from.x() > right()
                    ? Math.max(drawn.centreX(), right() + half + OVER)
                    : from.x() < left() ? Math.min(drawn.centreX(), left() - half - OVER) : drawn.centreX();
            double x = Math.max(room.left() + half, Math.min(room.right() - half, beside));
            double y = free > drawing.ruled(24) ? drawn.centreY() : drawn.top() - drawing.height(label) / 2 - OVER;
            drawing.text(label, new Point(x, Math.max(y, room.top() + drawing.height(label) / 2)), Anchor.CENTRE);
        });
    }

    private double left() {
        return metal().mapToDouble(Point::x).min().orElse(room.left());
    }

    private double right() {
        return metal().mapToDouble(Point::x).max().orElse(room.right());
    }

    private Stream<Point> metal() {
        return sketch.metal().stream()
                .flatMap(List::stream)
                .flatMap(List::stream)
                .map(this::at);
    }

    /** From what is touched to a little over the line. */
    private void extension(Point edge, Point line) {
        double away = edge.distanceTo(line);
        if (away > 1) {
            drawing.line(edge, edge.towards(line, (away + OVER) / away), Stroke.THIN, Role.LINE);
        }
    }

    private List<Point> placed(List<Point> points) {
        return points.stream().map(this::at).toList();
    }

    private Point at(Point point) {
        return new Point(
                room.centreX() + (point.x() - whole.centreX()) * scale,
                room.centreY() + (point.y() - whole.centreY()) * scale);
    }
}
