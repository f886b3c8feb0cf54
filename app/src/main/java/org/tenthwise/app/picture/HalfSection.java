package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** An outline put on the sheet: its chains of points above and below the axis, true to scale. */
final class HalfSection {

    /** Closer than this, teeth run together; a thread is then drawn with fewer and deeper ones. */
    private static final double LEAST_TOOTH = 6;

    private static final double LEAST_DEPTH = 2.6;
    /** Share of a pitch taken by crest, flank, root, flank. */
    private static final double[] TOOTH = {0.3, 0.2, 0.3, 0.2};

    private final Outline outline;
    private final double left;
    private final double axis;
    private final double scale;

    /** @param room what the part may fill */
    HalfSection(Outline outline, Box room) {
        this.outline = outline;
        double length = outline.length().millimetres().doubleValue();
        double across = outline.greatestDiameter().millimetres().doubleValue();
        this.scale = Math.min(room.width() / length, room.height() / across);
        this.left = room.centreX() - length * scale / 2;
        this.axis = room.centreY();
    }

    double axis() {
        return axis;
    }

    Box box() {
        double half = outline.greatestDiameter().millimetres().doubleValue() * scale / 2;
        return new Box(left, axis - half, x(outline.length()), axis + half);
    }

    double x(Length at) {
        return left + at.millimetres().doubleValue() * scale;
    }

    double pixels(Length length) {
        return length.millimetres().doubleValue() * scale;
    }

    /** On the sheet above the axis, or below it. */
    Point point(Mark mark, boolean above) {
        double radius = pixels(mark.diameter()) / 2;
        return new Point(x(mark.at()), above ? axis - radius : axis + radius);
    }

    /** The mark a spot of the sheet, above the axis or below, comes to; within the part. */
    Mark mark(Point spot) {
        Length at = Length.of(BigDecimal.valueOf((spot.x() - left) / scale), Unit.MILLIMETRE);
        Length diameter = Length.of(BigDecimal.valueOf(2 * Math.abs(axis - spot.y()) / scale), Unit.MILLIMETRE);
        return new Mark(
                Length.greatest(List.of(Length.ZERO, Length.least(List.of(at, outline.length())))),
                Length.least(List.of(diameter, outline.greatestDiameter())));
    }

    /** The outside, threads cut into it, from left to right. */
    List<Point> outside(boolean above) {
        List<Point> chain = new ArrayList<>();
        List<Mark> marks = outline.outside();
        for (int i = 0; i + 1 < marks.size(); i++) {
            Point from = point(marks.get(i), above);
            Point to = point(marks.get(i + 1), above);
            chain.add(from);
            if (to.x() > from.x()) {
                outline.threads().stream()
                        .sorted(Comparator.comparing(Outline.ThreadedLength::from))
                        .forEach(thread -> chain.addAll(teeth(thread, from, to, above)));
            }
        }
        chain.add(point(marks.get(marks.size() - 1), above));
        return chain;
    }

    /** The part of a thread that is cut into one stretch of the outside. */
    List<Point> teeth(Outline.ThreadedLength thread, Point from, Point to, boolean above) {
        double begin = Math.max(x(thread.from()), from.x());
        double end = Math.min(x(thread.to()), to.x());
        double pitch = Math.max(pixels(thread.pitch()), LEAST_TOOTH);
        double depth = Math.max(pixels(thread.depth()), LEAST_DEPTH) * (above ? 1 : -1);
        long count = (long) Math.floor((end - begin) / pitch + 0.01);
        List<Point> teeth = new ArrayList<>();
        double at = begin;
        for (long i = 0; i < count; i++) {
            for (int leg = 0; leg < TOOTH.length; leg++) {
                teeth.add(new Point(at, crest(from, to, at) + (leg < 2 ? 0 : depth)));
                at += TOOTH[leg] * pitch;
            }
        }
        if (count > 0) {
            teeth.add(new Point(at, crest(from, to, at)));
        }
        return teeth;
    }

    /** Where threads are, piece by piece, from their roots to their crests. */
    List<Box> threads(boolean above) {
        List<Box> boxes = new ArrayList<>();
        List<Mark> marks = outline.outside();
        for (int i = 0; i + 1 < marks.size(); i++) {
            Point from = point(marks.get(i), above);
            Point to = point(marks.get(i + 1), above);
            for (Outline.ThreadedLength thread : outline.threads()) {
                List<Point> teeth = to.x() > from.x() ? teeth(thread, from, to, above) : List.of();
                if (!teeth.isEmpty()) {
                    Box drawn = new Shape.Polyline(teeth, false).bounds();
                    double end = Math.min(x(thread.to()), to.x());
                    boxes.add(new Box(drawn.left(), drawn.top(), end, drawn.bottom()));
                }
            }
        }
        return boxes;
    }

    /** Where faces square to the axis are, ends among them. */
    List<Double> steps() {
        List<Double> steps = new ArrayList<>();
        for (List<Mark> profile : List.of(outline.outside(), outline.inside())) {
            for (int i = 0; i < profile.size(); i++) {
                boolean isEnd = i == 0 || i == profile.size() - 1;
                if (isEnd || profile.get(i).at().equals(profile.get(i - 1).at())) {
                    steps.add(x(profile.get(i).at()));
                }
            }
        }
        return steps;
    }

    /** Whether a spot lies in the wall, by more than a hair. */
    boolean isMetal(Point spot) {
        double radius = Math.abs(axis - spot.y());
        boolean within = spot.x() > left && spot.x() < x(outline.length());
        return within && radius > insideRadius(spot.x()) + 0.5 && radius < outsideRadius(spot.x()) - 0.5;
    }

    private static double crest(Point from, Point to, double x) {
        return from.y() + (to.y() - from.y()) * (x - from.x()) / (to.x() - from.x());
    }

    /** The inside above the axis, from left to right; empty for a solid part. */
    List<Point> inside() {
        return outline.inside().stream().map(mark -> point(mark, true)).toList();
    }

    /** The cut area above the axis. */
    List<Point> cut() {
        List<Point> ring = new ArrayList<>(outside(true));
        List<Point> inside = inside();
        double right = ring.get(ring.size() - 1).x();
        if (inside.isEmpty()) {
            ring.add(new Point(right, axis));
            ring.add(new Point(left, axis));
            return ring;
        }
        Point last = inside.get(inside.size() - 1);
        if (last.x() < right - 0.01) {
            ring.add(new Point(right, axis));
            ring.add(new Point(last.x(), axis));
        }
        for (int i = inside.size() - 1; i >= 0; i--) {
            ring.add(inside.get(i));
        }
        if (inside.get(0).x() > left + 0.01) {
            ring.add(new Point(inside.get(0).x(), axis));
            ring.add(new Point(left, axis));
        }
        return ring;
    }

    /** Pixels from the axis to the outside at {@code x}; the greater one at a step. */
    double outsideRadius(double x) {
        return radius(outline.outside(), x).orElse(0.0);
    }

    /** Pixels from the axis to the inside at {@code x}; zero where it is solid. */
    double insideRadius(double x) {
        return radius(outline.inside(), x).orElse(0.0);
    }

    private Optional<Double> radius(List<Mark> profile, double x) {
        Optional<Double> greatest = Optional.empty();
        for (int i = 0; i + 1 < profile.size(); i++) {
            Point from = point(profile.get(i), true);
            Point to = point(profile.get(i + 1), true);
            if (x >= from.x() - 0.01 && x <= to.x() + 0.01) {
                double here = to.x() - from.x() < 0.01 ? Math.min(from.y(), to.y()) : crest(from, to, x);
                greatest = Optional.of(Math.max(greatest.orElse(0.0), axis - here));
            }
        }
        return greatest;
    }

    /** Where a pocket is seen, half-way between axis and outside of the lower half. */
    Box pocket(Outline.Pocket pocket) {
        double middle = axis + outsideRadius((x(pocket.from()) + x(pocket.to())) / 2) / 2;
        double half = pixels(pocket.width()) / 2;
        return new Box(x(pocket.from()), middle - half, x(pocket.to()), middle + half);
    }

    /** Where a cross hole goes through the upper wall. */
    Box hole(Outline.CrossHole hole) {
        double half = pixels(hole.diameter()) / 2;
        double x = x(hole.at());
        return new Box(x - half, axis - outsideRadius(x), x + half, axis - insideRadius(x));
    }
}
