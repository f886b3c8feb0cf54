package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;

/**
 * Ways for leader lines from features to the edge of the part: straight up or down, else out through the bore. None
 * strikes a thread, a cross hole or a pocket it does not mean, runs along an edge, or comes near another.
 */
final class Leaders {

    private static final double APART = 4.5;
    private static final double ASIDE = 6;
    private static final double STEP = 3;
    private static final double FROM_EDGE = 3;

    private final Outline outline;
    private final HalfSection section;
    private final double weight;
    private final List<Box> features = new ArrayList<>();
    private final List<List<Point>> taken = new ArrayList<>();

    /** @param weight 1 for the line weights of the screen */
    Leaders(Outline outline, HalfSection section, double weight) {
        this.outline = outline;
        this.section = section;
        this.weight = weight;
        outline.crossHoles().forEach(hole -> features.add(section.hole(hole)));
        outline.pockets().forEach(pocket -> features.add(section.pocket(pocket)));
        for (boolean above : new boolean[] {true, false}) {
            features.addAll(section.threads(above));
        }
    }

    /** How far beyond the ends of a part a leader can run, for the line weights of the screen. */
    static double beyond() {
        return 3 * ASIDE;
    }

    /**
     * The way for the numbers at {@code marks}, which are on one feature; absent where none is free.
     *
     * @param lane the height at which the way ends, above or below all of the part
     */
    Optional<List<Point>> way(List<Mark> marks, boolean above, double lane) {
        List<OutlineFeature> meant = marks.stream()
                .map(mark -> OutlineFeature.at(mark, outline, section))
                .map(feature -> above || feature.side() == OutlineFeature.Side.BELOW
                        ? feature
                        : feature.mirrored(section.axis()))
                .toList();
        OutlineFeature feature = meant.get(0);
        List<Point> spots =
                spots(feature, meant.stream().map(OutlineFeature::spot).toList());
        Optional<List<Point>> way = Stream.concat(
                        spots.stream().flatMap(spot -> straight(feature, spot, lane)),
                        spots.stream().flatMap(spot -> pastTheEnd(feature, spot, lane)))
                .filter(some -> isFree(feature, some))
                .findFirst();
        way.ifPresent(taken::add);
        return way;
    }

    /** Places on a feature, those asked for and near to them first. */
    private static List<Point> spots(OutlineFeature feature, List<Point> asked) {
        Box box = feature.bounds();
        double x = asked.stream().mapToDouble(Point::x).average().orElse(box.centreX());
        double y = asked.stream().mapToDouble(Point::y).average().orElse(box.centreY());
        Stream<Point> along;
        if (feature.isUpright() || feature.closed() && feature.side() == OutlineFeature.Side.ABOVE) {
            along = steps(box.top(), box.bottom()).mapToObj(at -> new Point(box.centreX(), at));
        } else if (feature.closed()) {
            along = steps(box.left(), box.right()).mapToObj(at -> new Point(at, box.centreY()));
        } else {
            along = steps(box.left(), box.right()).mapToObj(feature::onLine);
        }
        return Stream.concat(asked.stream(), along)
                .sorted(Comparator.comparingDouble((Point spot) -> spot.distanceTo(new Point(x, y))))
                .toList();
    }

    /** From {@code least} to {@code most}, the ends left out; the middle is always there. */
    private static DoubleStream steps(double least, double most) {
        int count = (int) Math.floor((most - least) / STEP);
        return DoubleStream.concat(
                DoubleStream.of((least + most) / 2), IntStream.range(1, count).mapToDouble(i -> least + i * STEP));
    }

    /** Square to the axis; from a face that is square itself a little aside, first on the side where no metal is. */
    private Stream<List<Point>> straight(OutlineFeature feature, Point spot, double lane) {
        if (!feature.isUpright()) {
            return Stream.of(List.of(spot, new Point(spot.x(), lane)));
        }
        return DoubleStream.of(1, -1, 0.5, -0.5)
                .mapToObj(share -> share * ASIDE * weight)
                .sorted(Comparator.comparing(aside -> section.isMetal(spot.plus(Math.signum(aside), 0))))
                .map(aside -> List.of(spot, new Point(spot.x() + aside, lane)));
    }

    /** Within the bore out of one end of the part, and from there square to the axis; from a pocket along the axis. */
    private Stream<List<Point>> pastTheEnd(OutlineFeature feature, Point spot, double lane) {
        if (feature.side() == OutlineFeature.Side.EITHER) {
            return Stream.of();
        }
        boolean level = feature.closed() || feature.isUpright();
        return DoubleStream.of(1, 2, 3)
                .mapToObj(count -> count * ASIDE * weight)
                .flatMap(out ->
                        Stream.of(section.box().left() - out, section.box().right() + out))
                .sorted(Comparator.comparing(x -> Math.abs(x - spot.x())))
                .flatMap(x -> DoubleStream.of(level ? 0 : 0.3, 0.6, 0.9)
                        .mapToObj(share -> new Point(x, spot.y() + share * (section.axis() - spot.y())))
                        .map(gate -> List.of(spot, gate, new Point(x, lane))))
                .filter(way -> feature.closed() || isThroughAir(way.get(0), way.get(1)));
    }

    private boolean isThroughAir(Point from, Point to) {
        int steps = (int) Math.ceil(from.distanceTo(to));
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> from.towards(to, (double) i / steps))
                .noneMatch(section::isMetal);
    }

    private boolean isFree(OutlineFeature feature, List<Point> way) {
        List<Point> outside = feature.closed() ? from(feature.bounds(), way) : way;
        boolean struck = features.stream()
                .filter(box -> !box.grown(1).holds(feature.bounds()))
                .anyMatch(box -> legs(outside).anyMatch(leg -> leg.cuts(box)));
        double end = way.get(way.size() - 1).x();
        boolean alongAnEdge = section.steps().stream().anyMatch(x -> Math.abs(x - end) < FROM_EDGE * weight);
        return !struck
                && !alongAnEdge
                && taken.stream().flatMap(Leaders::legs).noneMatch(other -> legs(way)
                        .anyMatch(leg -> leg.distanceTo(other) < APART * weight));
    }

    /** A hole is drawn over what it goes through, so that what lies in it is not struck. */
    private static List<Point> from(Box box, List<Point> way) {
        Point to = way.get(1);
        Point start = way.get(0).x() == to.x()
                ? new Point(to.x(), to.y() < box.top() ? box.top() : box.bottom())
                : way.get(0);
        return Stream.concat(Stream.of(start), way.stream().skip(1)).toList();
    }

    private static Stream<Leg> legs(List<Point> way) {
        return IntStream.range(1, way.size()).mapToObj(i -> new Leg(way.get(i - 1), way.get(i)));
    }
}
