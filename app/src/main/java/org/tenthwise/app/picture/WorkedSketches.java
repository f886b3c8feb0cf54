package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.WorkedSketch.Pin;
import org.tenthwise.app.picture.WorkedSketch.SketchedSize;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.worked.BallsInTaper;
import org.tenthwise.model.worked.BetweenCentres;
import org.tenthwise.model.worked.ChordAndHeight;
import org.tenthwise.model.worked.KeywayDepth;
import org.tenthwise.model.worked.OnSineBar;
import org.tenthwise.model.worked.OverTeethSpan;
import org.tenthwise.model.worked.PinInVee;
import org.tenthwise.model.worked.PinsInDovetail;
import org.tenthwise.model.worked.PinsInTeeth;
import org.tenthwise.model.worked.RollersOnTaper;
import org.tenthwise.model.worked.RollsAtArc;
import org.tenthwise.model.worked.TwoDiameters;
import org.tenthwise.model.worked.WorkedBy;

/** A sketch for each way of working a size out. Every figure here is only where lines lie on it. */
final class WorkedSketches implements WorkedBy.Cases<WorkedSketch> {

    private static final double COT_60 = 1 / Math.tan(Math.toRadians(60));

    private final List<Optional<String>> figures;

    /** @param figures of the readings, in their order */
    WorkedSketches(List<Optional<String>> figures) {
        this.figures = List.copyOf(figures);
    }

    private Optional<String> figure(int which) {
        return figures.get(which);
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static List<Point> box(double left, double top, double right, double bottom) {
        return new Box(left, top, right, bottom).corners();
    }

    private static List<Point> arc(Point centre, double radius, double from, double to) {
        int steps = 48;
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> centre.plus(
                        radius * Math.cos(Math.toRadians(from + (to - from) * i / steps)),
                        radius * Math.sin(Math.toRadians(from + (to - from) * i / steps))))
                .toList();
    }

    private static List<Point> joined(List<Point> one, List<Point> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    private static List<Pin> pair(double x, double y, double radius) {
        return List.of(new Pin(p(-x, y), radius), new Pin(p(x, y), radius));
    }

    /** A work of one outline. */
    private static WorkedSketch of(
            List<Point> metal, List<List<Point>> neighbours, List<Pin> pins, SketchedSize... dimensions) {
        return new WorkedSketch(List.of(List.of(metal)), neighbours, pins, List.of(), List.of(dimensions));
    }

    @Override
    public WorkedSketch twoDiameters(TwoDiameters by) {
        return twoDiameters();
    }

    WorkedSketch twoDiameters() {
        return new WorkedSketch(
                List.of(List.of(List.of(p(0, -2), p(8, -1.2), p(8, 1.2), p(0, 2)))),
                List.of(),
                List.of(),
                List.of(List.of(p(-0.5, 0), p(8.5, 0))),
                List.of(
                        SketchedSize.upright(1.6, p(1.6, -1.84), p(1.6, 1.84), figure(0)),
                        SketchedSize.upright(6.4, p(6.4, -1.36), p(6.4, 1.36), figure(1))));
    }

    @Override
    public WorkedSketch sineBar(OnSineBar by) {
        return sineBar();
    }

    WorkedSketch sineBar() {
        Point left = p(0.8, -0.5);
        Point along = p(Math.cos(Math.toRadians(25)), -Math.sin(Math.toRadians(25)));
        Point right = left.plus(7 * along.x(), 7 * along.y());
        double stack = right.y() + 0.5;
        Point lower = on(left, along, 0.8, 1);
        Point upper = on(left, along, 6.2, 1);
        double level = upper.y() - 0.7;
        return of(
                List.of(lower, upper, p(upper.x(), level), p(lower.x(), level)),
                List.of(
                        box(-0.6, 0, 9, 0.5),
                        box(right.x() - 0.7, stack, right.x() + 0.7, 0),
                        List.of(
                                on(left, along, -0.7, 0.2),
                                on(left, along, 7.7, 0.2),
                                on(left, along, 7.7, 1),
                                on(left, along, -0.7, 1))),
                List.of(new Pin(left, 0.5), new Pin(right, 0.5)),
                SketchedSize.upright(8.6, p(right.x() + 0.7, stack), p(right.x() + 0.7, 0), figure(0)));
    }

    /** A point so far along a slope, and so far above it. */
    private static Point on(Point start, Point along, double far, double above) {
        return start.plus(far * along.x() + above * along.y(), far * along.y() - above * along.x());
    }

    @Override
    public WorkedSketch rollersOnTaper(RollersOnTaper by) {
        return rollersOnTaper(by.smallEndDown());
    }

    WorkedSketch rollersOnTaper(boolean smallEndDown) {
        double slope = smallEndDown ? 0.2 : -0.2;
        double foot = smallEndDown ? 1.4 : 2.6;
        double top = foot + 6 * slope;
        double roller = 0.6;
        double lean = roller * Math.hypot(1, slope);
        double low = foot + roller * slope + lean;
        double high = foot + (3 + roller) * slope + lean;
        return of(
                List.of(p(-foot, 0), p(-top, -6), p(top, -6), p(foot, 0)),
                List.of(box(-5, 0, 5, 0.5), box(-high - 0.8, -3, -high + 0.8, 0), box(high - 0.8, -3, high + 0.8, 0)),
                Stream.concat(pair(low, -roller, roller).stream(), pair(high, -3 - roller, roller).stream())
                        .toList(),
                SketchedSize.level(1.4, p(-low - roller, -roller), p(low + roller, -roller), figure(0)),
                SketchedSize.level(-7, p(-high - roller, -3 - roller), p(high + roller, -3 - roller), figure(1)));
    }

    @Override
    public WorkedSketch ballsInTaper(BallsInTaper by) {
        return ballsInTaper();
    }

    WorkedSketch ballsInTaper() {
        List<Point> left = List.of(p(-5, 0), p(-2.4, 0), p(-1.42, 7), p(-5, 7));
        List<Point> right = List.of(p(5, 0), p(2.4, 0), p(1.42, 7), p(5, 7));
        return new WorkedSketch(
                List.of(List.of(left), List.of(right)),
                List.of(),
                List.of(new Pin(p(0, 6), 1.54), new Pin(p(0, 2.6), 2.015)),
                List.of(List.of(p(0, -0.6), p(0, 7.8))),
                List.of(
                        SketchedSize.upright(6, p(5, 0), p(0, 4.46), figure(0)),
                        SketchedSize.upright(-6, p(-5, 0), p(0, 0.585), figure(1))));
    }

    @Override
    public WorkedSketch chord(ChordAndHeight by) {
        return chord();
    }

    WorkedSketch chord() {
        List<Point> metal = joined(arc(p(0, 5.2), 5.2, 218, 322), List.of(p(4.1, 3.4), p(-4.1, 3.4)));
        return new WorkedSketch(
                List.of(List.of(metal)),
                List.of(),
                List.of(),
                List.of(List.of(p(-3.2, 1.1), p(3.2, 1.1))),
                List.of(SketchedSize.upright(5, p(0, 0), p(3.2, 1.1), figure(0))));
    }

    @Override
    public WorkedSketch rollsAtArc(RollsAtArc by) {
        return rollsAtArc(by.concave());
    }

    WorkedSketch rollsAtArc(boolean concave) {
        if (!concave) {
            double away = Math.sqrt(2 * 1.4 * 4);
            return of(
                    arc(p(0, -4), 4, 10, 170),
                    List.of(box(-5.5, 0, 5.5, 0.5)),
                    pair(away, -0.7, 0.7),
                    SketchedSize.level(1.5, p(-away - 0.7, -0.7), p(away + 0.7, -0.7), figure(0)));
        }
        double centre = -5 + Math.sqrt(4.2 * 4.2 - 2.6 * 2.6);
        List<Point> metal =
                joined(List.of(p(5, -2.29), p(5, 1.2), p(-5, 1.2), p(-5, -2.29)), arc(p(0, -5), 5, 147.2, 32.8));
        return of(
                metal,
                List.of(),
                pair(2.6, centre, 0.8),
                SketchedSize.level(-3.6, p(-3.4, centre), p(3.4, centre), figure(0)),
                SketchedSize.upright(0, p(2.6, centre + 0.8), p(0, 0), figure(1)));
    }

    @Override
    public WorkedSketch dovetail(PinsInDovetail by) {
        return dovetail(by.side());
    }

    WorkedSketch dovetail(DovetailSide side) {
        double run = 2.6 * COT_60;
        double in = 0.6 * Math.sqrt(3);
        if (side == DovetailSide.MALE) {
            List<Point> metal = List.of(
                    p(-5, 1.5),
                    p(5, 1.5),
                    p(5, 0),
                    p(1.8, 0),
                    p(1.8 + run, -2.6),
                    p(-1.8 - run, -2.6),
                    p(-1.8, 0),
                    p(-5, 0));
            double x = 1.8 + in;
            return of(
                    metal,
                    List.of(),
                    pair(x, -0.6, 0.6),
                    SketchedSize.level(-3.6, p(-x - 0.6, -0.6), p(x + 0.6, -0.6), figure(0)));
        }
        List<Point> metal = List.of(
                p(-5, -2.6),
                p(-3.4 + run, -2.6),
                p(-3.4, 0),
                p(3.4, 0),
                p(3.4 - run, -2.6),
                p(5, -2.6),
                p(5, 1.4),
                p(-5, 1.4));
        double x = 3.4 - in;
        return of(
                metal,
                List.of(),
                pair(x, -0.6, 0.6),
                SketchedSize.level(-0.6, p(-x + 0.6, -0.6), p(x - 0.6, -0.6), figure(0)));
    }

    @Override
    public WorkedSketch keyway(KeywayDepth by) {
        return keyway(by.block().isPresent());
    }

    WorkedSketch keyway(boolean withBlock) {
        double side = Math.toDegrees(Math.asin(1.1 / 4));
        List<Point> metal = joined(arc(p(0, 0), 4, 270 + side, 630 - side), List.of(p(-1.1, -2.2), p(1.1, -2.2)));
        double touched = withBlock ? -4.6 : -2.2;
        List<List<Point>> block = withBlock ? List.of(box(-0.9, -4.6, 0.9, -2.2)) : List.of();
        SketchedSize farSide = SketchedSize.upright(5.2, p(0.9, touched), p(0, 4), figure(figures.size() - 1));
        return figures.size() == 1
                ? of(metal, block, List.of(), farSide)
                : of(metal, block, List.of(), SketchedSize.level(5, p(-4, 0), p(4, 0), figure(0)), farSide);
    }

    /** A shaft and the hub on it, each from its keyway to its far side: first the shaft, then the hub. */
    WorkedSketch keywayAndHub() {
        double away = 10.6;
        double side = Math.toDegrees(Math.asin(1.1 / 4));
        List<Point> shaft = joined(arc(p(0, 0), 4, 270 + side, 630 - side), List.of(p(-1.1, -2.2), p(1.1, -2.2)));
        List<Point> bore =
                joined(arc(p(away, 0), 4, 270 + side, 630 - side), List.of(p(away - 1.1, -4.9), p(away + 1.1, -4.9)));
        return new WorkedSketch(
                List.of(List.of(shaft), List.of(box(away - 5, -5.7, away + 5, 4.8), bore)),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        SketchedSize.upright(-5.2, p(-0.9, -2.2), p(0, 4), figure(0)),
                        SketchedSize.upright(away + 6.2, p(away + 0.9, -4.9), p(away, 4), figure(1))));
    }

    @Override
    public WorkedSketch vee(PinInVee by) {
        double root = 2.4 / Math.tan(Math.toRadians(30));
        List<Point> metal =
                List.of(p(-4.5, 0), p(-2.4, 0), p(0, root), p(2.4, 0), p(4.5, 0), p(4.5, 5.4), p(-4.5, 5.4));
        double centre = root - 4;
        return of(
                metal,
                List.of(),
                List.of(new Pin(p(0, centre), 2)),
                SketchedSize.upright(3.6, p(0, centre - 2), p(3.6, 0), figure(0)));
    }

    @Override
    public WorkedSketch pinsInTeeth(PinsInTeeth by) {
        return ToothSketches.overPins(by.teeth().teeth(), by.side(), figure(0));
    }

    @Override
    public WorkedSketch span(OverTeethSpan by) {
        return ToothSketches.span(by.teeth().teeth(), by.over(), figure(0));
    }

    @Override
    public WorkedSketch centres(BetweenCentres by) {
        return centres(by.read());
    }

    WorkedSketch centres(BetweenCentres.Read read) {
        Pin first = new Pin(p(-2.8, 0), 1.6);
        Pin second = new Pin(p(2.8, 0), 1.2);
        List<List<Point>> plate = Stream.concat(
                        Stream.of(box(-6, -2.8, 6, 2.8)),
                        Stream.of(first, second).map(bore -> arc(bore.centre(), bore.radius(), 0, 360)))
                .toList();
        boolean over = read == BetweenCentres.Read.OVER;
        double[] x = DoubleStream.of(-2.8 - (over ? 1.6 : -1.6), 2.8 + (over ? 1.2 : -1.2))
                .toArray();
        return new WorkedSketch(
                List.of(plate),
                List.of(),
                read == BetweenCentres.Read.WEB ? List.of() : List.of(first, second),
                List.of(List.of(p(-6.6, 0), p(6.6, 0))),
                List.of(SketchedSize.level(-3.8, p(x[0], 0), p(x[1], 0), figure(0))));
    }
}
