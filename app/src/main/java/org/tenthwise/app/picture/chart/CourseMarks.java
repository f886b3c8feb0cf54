package org.tenthwise.app.picture.chart;

import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.FreeRoom;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.app.picture.VerdictShape;

/**
 * The parts of a course: the size judged by the shape of its verdict, what was read first after the last cut as a small
 * mark at it, a line from part to part that ends at every break.
 */
record CourseMarks(CoursePicture course, PartPlaces columns, SizeScale scale, Box plot) {

    private static final double FIGURE = 22;
    private static final double ARROW = 9;

    void draw(Drawing drawing, FreeRoom room) {
        for (int i = 1; i < course.spots().size(); i++) {
            if (isRead(i - 1) && isRead(i) && !course.isBroken(i)) {
                drawing.line(at(i - 1, drawing), at(i, drawing), Stroke.NEIGHBOUR, Role.INK2);
                room.take(at(i - 1, drawing), at(i, drawing));
            }
        }
        for (int i = 0; i < course.spots().size(); i++) {
            reach(i, drawing, room);
            firstOf(i, drawing, room);
        }
        for (int i = 0; i < course.spots().size(); i++) {
            if (isRead(i)) {
                mark(i, drawing, room);
            }
        }
        for (int place : named()) {
            figure(place, drawing, room);
        }
    }

    /** The part in hand, and every part out of the window. */
    private List<Integer> named() {
        return IntStream.range(0, course.spots().size())
                .filter(this::isRead)
                .filter(i -> isInHand(i) || scale.outside(size(i)) != 0)
                .boxed()
                .sorted((a, b) -> Boolean.compare(isInHand(b), isInHand(a)))
                .toList();
    }

    private boolean isInHand(int place) {
        return course.inHand().isPresent() && course.inHand().getAsInt() == place;
    }

    private boolean isRead(int place) {
        return course.spots().get(place).last().isPresent();
    }

    private double size(int place) {
        return course.spots().get(place).last().orElseThrow().at();
    }

    private double radius(Drawing drawing) {
        return columns.radius(drawing.frame().lineScale());
    }

    /** Whole in the picture; where a size lies further out, with room for its arrow. */
    private Point at(int place, Drawing drawing) {
        double radius = radius(drawing);
        int outside = scale.outside(size(place));
        double margin = outside == 0 ? radius : radius + ARROW + 2;
        double y = Math.min(Math.max(scale.y(size(place)), plot.top() + margin), plot.bottom() - margin);
        return new Point(columns.x(place), y);
    }

    /** From the least to the greatest size of a part, with a short bar at either end. */
    private void reach(int place, Drawing drawing, FreeRoom room) {
        course.spots().get(place).reach().ifPresent(sizes -> {
            double x = columns.x(place);
            double least = scale.y(sizes.least());
            double greatest = scale.y(sizes.greatest());
            double half = 0.7 * radius(drawing);
            drawing.down(x, greatest, least, Stroke.NEIGHBOUR, Role.INK);
            drawing.across(least, x - half, x + half, Stroke.NEIGHBOUR, Role.INK);
            drawing.across(greatest, x - half, x + half, Stroke.NEIGHBOUR, Role.INK);
            room.take(new Box(x - half - 2, greatest - 2, x + half + 2, least + 2));
        });
    }

    private void firstOf(int place, Drawing drawing, FreeRoom room) {
        course.spots().get(place).first().ifPresent(first -> {
            Point spot = new Point(columns.x(place), scale.y(first.at()));
            double radius = 0.7 * radius(drawing);
            if (isRead(place)) {
                drawing.line(spot, at(place, drawing), Stroke.THIN, Role.INK2);
                room.take(spot, at(place, drawing));
            }
            first(drawing, spot, radius);
            room.take(new Box(spot.x(), spot.y(), spot.x(), spot.y()).grown(radius + 2));
        });
    }

    /** A small square on its corner, empty inside. */
    static void first(Drawing drawing, Point at, double radius) {
        List<Point> corners = List.of(
                at.plus(0, -radius), at.plus(radius, 0), at.plus(0, radius), at.plus(-radius, 0), at.plus(0, -radius));
        drawing.area(corners, drawing.frame().ground());
        drawing.chain(corners, Stroke.NEIGHBOUR, Role.INK);
    }

    private void mark(int place, Drawing drawing, FreeRoom room) {
        Point spot = at(place, drawing);
        double radius = radius(drawing);
        if (isInHand(place)) {
            drawing.disc(spot, radius + 5, drawing.frame().ground());
            drawing.circle(spot, radius + 4, Stroke.OUTLINE, Role.ACCENT);
        } else {
            drawing.disc(spot, radius + 1.5, drawing.frame().ground());
        }
        VerdictShape.draw(drawing, course.spots().get(place).verdict(), spot, radius);
        int outside = scale.outside(size(place));
        if (outside != 0) {
            double foot = spot.y() - outside * (radius + 2);
            drawing.area(
                    List.of(
                            new Point(spot.x() - ARROW / 2, foot),
                            new Point(spot.x() + ARROW / 2, foot),
                            new Point(spot.x(), foot - outside * (ARROW - 1))),
                    Role.INK);
        }
        room.take(new Box(spot.x(), spot.y(), spot.x(), spot.y()).grown(radius + 6));
    }

    private void figure(int place, Drawing drawing, FreeRoom room) {
        String text = course.spots().get(place).last().orElseThrow().text();
        Label plain = Label.of(text, FIGURE, isInHand(place) ? Role.ACCENT : Role.INK);
        Label label = isInHand(place) ? plain.bold() : plain;
        Point spot = at(place, drawing);
        room.nearest(drawing.width(label) + 10, drawing.height(label) + 12, spot)
                .ifPresent(box -> {
                    Point end = nearestOf(box, spot);
                    double reach = radius(drawing) + 5;
                    double along = Math.hypot(end.x() - spot.x(), end.y() - spot.y());
                    if (along > reach + 8) {
                        Point from = new Point(
                                spot.x() + (end.x() - spot.x()) * reach / along,
                                spot.y() + (end.y() - spot.y()) * reach / along);
                        drawing.line(from, end, Stroke.THIN, label.role());
                        room.take(from, end);
                    }
                    drawing.text(label, box, Anchor.CENTRE);
                });
    }

    private static Point nearestOf(Box box, Point spot) {
        return new Point(
                Math.min(Math.max(spot.x(), box.left()), box.right()),
                Math.min(Math.max(spot.y(), box.top()), box.bottom()));
    }
}
