package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;

/**
 * What a mark on an outline points at: the nearest of its surfaces, threads, pockets, holes and end faces, the one
 * named first here where a mark touches several.
 *
 * @param line the feature as a line on the sheet
 * @param closed whether the line comes back to its start
 * @param spot where the mark is put on the sheet
 * @param side where its number can stand
 */
record OutlineFeature(List<Point> line, boolean closed, Point spot, Side side) {

    /** On which side of the part a number for the feature can stand. */
    enum Side {
        ABOVE,
        EITHER,
        BELOW
    }

    /** The same seen below the axis. */
    OutlineFeature mirrored(double axis) {
        return new OutlineFeature(
                line.stream()
                        .map(point -> new Point(point.x(), 2 * axis - point.y()))
                        .toList(),
                closed,
                new Point(spot.x(), 2 * axis - spot.y()),
                side);
    }

    Box bounds() {
        return new Shape.Polyline(line, closed).bounds();
    }

    /** Whether it is a face square to the axis. */
    boolean isUpright() {
        return !closed && bounds().width() < 0.01;
    }

    /** Where its line is at {@code x}, which lies between its ends. */
    Point onLine(double x) {
        return IntStream.range(1, line.size())
                .filter(i ->
                        line.get(i).x() > line.get(i - 1).x() && line.get(i).x() >= x)
                .mapToObj(i -> line.get(i - 1)
                        .towards(
                                line.get(i),
                                (x - line.get(i - 1).x())
                                        / (line.get(i).x() - line.get(i - 1).x())))
                .findFirst()
                .orElseThrow();
    }

    private static final Box ANY_SHEET = new Box(0, 0, 1000, 1000);

    /** Pixels, in steps of a hair, so that two features a mark lies on are as near. */
    private record Near(long hairs, OutlineFeature feature) {

        private static final double A_PIXEL = 1e6;

        Near(double distance, OutlineFeature feature) {
            this(Math.round(distance * A_PIXEL), feature);
        }
    }

    static OutlineFeature at(Mark mark, Outline outline, HalfSection section) {
        Point spot = section.point(mark, true);
        List<Near> near = new ArrayList<>();
        surfaces(outline.outside(), section).forEach(surface -> near.add(outside(surface, outline, section, spot)));
        surfaces(outline.inside(), section).forEach(surface -> near.add(surface(surface, spot, Side.ABOVE)));
        outline.pockets().forEach(pocket -> near.add(pocket(section.pocket(pocket), section.axis(), spot)));
        outline.crossHoles().forEach(hole -> near.add(hole(section.hole(hole), spot)));
        ends(outline, section).forEach(end -> near.add(surface(end, spot, Side.EITHER)));
        return near.stream()
                .min(Comparator.comparingLong(Near::hairs))
                .orElseThrow()
                .feature();
    }

    /** The middle of the feature a mark points at, where that is no other's; else the nearest spot on it. */
    static Mark touched(Mark mark, Outline outline, HalfSection section) {
        OutlineFeature feature = at(mark, outline, section);
        return Stream.of(feature.middle(), feature.spot())
                .map(section::mark)
                .filter(put -> at(put, outline, section).line().equals(feature.line()))
                .findFirst()
                .orElse(mark);
    }

    private Point middle() {
        return closed ? bounds().centre() : line.get(0).towards(line.get(line.size() - 1), 0.5);
    }

    /** Whether a mark sits on a floor: on an inner face square to the axis, or in a pocket and not at an end of it. */
    static boolean isFloor(Mark mark, Outline outline) {
        OutlineFeature feature = at(mark, outline, new HalfSection(outline, ANY_SHEET));
        Box bounds = feature.bounds();
        return switch (feature.side()) {
            case ABOVE -> !feature.closed() && bounds.width() == 0;
            case BELOW -> feature.spot().x() > bounds.left() && feature.spot().x() < bounds.right();
            case EITHER -> false;
        };
    }

    private static List<List<Point>> surfaces(List<Mark> profile, HalfSection section) {
        return IntStream.range(1, profile.size())
                .mapToObj(i -> List.of(section.point(profile.get(i - 1), true), section.point(profile.get(i), true)))
                .toList();
    }

    /** The faces at both ends, from the outside down to the bore or to the axis. */
    private static List<List<Point>> ends(Outline outline, HalfSection section) {
        List<Mark> outside = outline.outside();
        return Stream.of(outside.get(0), outside.get(outside.size() - 1))
                .map(edge -> {
                    Length bore = outline.inside().stream()
                            .filter(mark -> mark.at().equals(edge.at()))
                            .map(Mark::diameter)
                            .max(Comparator.naturalOrder())
                            .orElse(Length.ZERO);
                    return List.of(section.point(edge, true), section.point(new Mark(edge.at(), bore), true));
                })
                .toList();
    }

    /** The pocket is seen below the axis, so a mark is looked for at the same distance from it. */
    private static Near pocket(Box pocket, double axis, Point spot) {
        Point mirrored = new Point(spot.x(), 2 * axis - spot.y());
        double outX = Math.max(0, Math.max(pocket.left() - spot.x(), spot.x() - pocket.right()));
        double outY = Math.max(0, Math.max(pocket.top() - mirrored.y(), mirrored.y() - pocket.bottom()));
        return new Near(
                Math.hypot(outX, outY),
                new OutlineFeature(
                        pocket.corners(),
                        true,
                        new Point(Math.min(Math.max(spot.x(), pocket.left()), pocket.right()), pocket.centreY()),
                        Side.BELOW));
    }

    private static Near hole(Box hole, Point spot) {
        double outX = Math.max(0, Math.max(hole.left() - spot.x(), spot.x() - hole.right()));
        double outY = Math.max(0, Math.max(hole.top() - spot.y(), spot.y() - hole.bottom()));
        return new Near(
                Math.hypot(outX, outY),
                new OutlineFeature(
                        hole.corners(),
                        true,
                        new Point(hole.centreX(), Math.min(Math.max(spot.y(), hole.top()), hole.bottom())),
                        Side.ABOVE));
    }

    private static Near outside(List<Point> surface, Outline outline, HalfSection section, Point spot) {
        Point from = surface.get(0);
        Point to = surface.get(1);
        return outline.threads().stream()
                .filter(thread ->
                        to.x() > from.x() && spot.x() >= section.x(thread.from()) && spot.x() <= section.x(thread.to()))
                .map(thread -> section.teeth(thread, from, to, true))
                .filter(teeth -> !teeth.isEmpty())
                .findFirst()
                .map(teeth -> new Near(
                        distance(surface, spot), new OutlineFeature(teeth, false, nearest(surface, spot), Side.EITHER)))
                .orElseGet(() -> surface(surface, spot, Side.EITHER));
    }

    private static Near surface(List<Point> surface, Point spot, Side side) {
        return new Near(distance(surface, spot), new OutlineFeature(surface, false, nearest(surface, spot), side));
    }

    private static double distance(List<Point> surface, Point spot) {
        return nearest(surface, spot).distanceTo(spot);
    }

    private static Point nearest(List<Point> surface, Point spot) {
        Point from = surface.get(0);
        Point to = surface.get(1);
        double length = from.distanceTo(to);
        if (length == 0) {
            return from;
        }
        double along = ((spot.x() - from.x()) * (to.x() - from.x()) + (spot.y() - from.y()) * (to.y() - from.y()))
                / (length * length);
        return from.towards(to, Math.min(1, Math.max(0, along)));
    }
}
