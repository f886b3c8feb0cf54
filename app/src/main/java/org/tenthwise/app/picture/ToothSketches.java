package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.WorkedSketch.Pin;
import org.tenthwise.app.picture.WorkedSketch.SketchedSize;
import org.tenthwise.model.compute.gear.ToothSide;

/** Gears and splines as they are measured, with as many teeth as can be told apart, an odd number where it is odd. */
final class ToothSketches {

    private static final int FEWEST = 8;
    private static final int MOST = 16;
    private static final double TIP = 4;
    private static final double RIM = 5.6;
    private static final double UPWARDS = -90;

    private ToothSketches() {}

    static WorkedSketch overPins(int teeth, ToothSide side, Optional<String> figure) {
        int drawn = drawn(teeth);
        boolean out = side == ToothSide.EXTERNAL;
        double module = module(drawn);
        double pitch = module * drawn / 2;
        double pin = 0.82 * module;
        double centre = pitch + (out ? 0.35 : -0.35) * module;
        Point upper = new Point(0, -centre);
        double off = drawn % 2 == 0 ? 0 : 180.0 / drawn;
        Point lower = at(centre, -UPWARDS + off);
        double reach = out ? pin : -pin;
        SketchedSize read = out
                ? SketchedSize.upright(TIP + 1.6, upper.plus(0, -reach), lower.plus(0, reach), figure)
                : SketchedSize.upright(0, upper.plus(0, -reach), new Point(0, lower.y() + reach), figure);
        return new WorkedSketch(
                List.of(out ? List.of(outline(drawn, true, 0)) : List.of(rim(), outline(drawn, false, 0))),
                List.of(),
                List.of(new Pin(upper, pin), new Pin(lower, pin)),
                List.of(),
                List.of(read));
    }

    static WorkedSketch span(int teeth, int over, Optional<String> figure) {
        int drawn = drawn(teeth);
        double module = module(drawn);
        double pitch = module * drawn / 2;
        int across = Math.max(1, Math.min(over, drawn / 4));
        double half = Math.toRadians((across - 0.5) * 180 / drawn);
        double x = pitch * Math.sin(half);
        double y = -pitch * Math.cos(half);
        double top = -TIP - 1;
        List<List<Point>> anvils = Stream.of(-1, 1)
                .map(sign -> new Box(
                                Math.min(sign * x, sign * (x + 0.5)),
                                top,
                                Math.max(sign * x, sign * (x + 0.5)),
                                y + 0.4)
                        .corners())
                .toList();
        return new WorkedSketch(
                List.of(List.of(outline(drawn, true, across % 2 == 0 ? 0 : 180.0 / drawn))),
                anvils,
                List.of(),
                List.of(),
                List.of(SketchedSize.level(top - 0.8, new Point(-x, top), new Point(x, top), figure)));
    }

    private static int drawn(int teeth) {
        int most = teeth % 2 == 0 ? MOST : MOST - 1;
        int fewest = teeth % 2 == 0 ? FEWEST : FEWEST + 1;
        return Math.max(fewest, Math.min(most, teeth));
    }

    private static double module(int teeth) {
        return 2 * TIP / (teeth + 2);
    }

    private static List<Point> rim() {
        return IntStream.range(0, 72).mapToObj(i -> at(RIM, i * 5.0)).toList();
    }

    /** Teeth with straight flanks, a space in the middle above, turned by so many degrees. */
    private static List<Point> outline(int teeth, boolean out, double turned) {
        double module = module(teeth);
        double pitch = module * teeth / 2;
        double inner = pitch - (out ? 1.1 : 0.9) * module;
        double outer = pitch + (out ? 1 : 1.2) * module;
        double quarter = 90.0 / teeth;
        double wide = quarter * 1.45;
        double narrow = quarter * 0.6;
        return IntStream.range(0, teeth)
                .mapToObj(i -> UPWARDS + turned + (i + 0.5) * 360 / teeth)
                .flatMap(tooth -> Stream.of(
                        at(inner, tooth - (out ? wide : narrow)),
                        at(outer, tooth - (out ? narrow : wide)),
                        at(outer, tooth + (out ? narrow : wide)),
                        at(inner, tooth + (out ? wide : narrow))))
                .toList();
    }

    private static Point at(double radius, double degrees) {
        return new Point(radius * Math.cos(Math.toRadians(degrees)), radius * Math.sin(Math.toRadians(degrees)));
    }
}
