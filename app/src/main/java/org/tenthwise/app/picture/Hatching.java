package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Parallel lines clipped to an area. All areas hatched at one angle and spacing share one set of lines, so that
 * hatching runs on from one area into the next, as metal does.
 */
final class Hatching {

    private Hatching() {}

    /**
     * @param rings closed outlines; what lies inside an odd number of them is hatched
     * @param degrees slope of the lines, rising to the right where positive
     * @param spacing pixels between lines, more than zero
     */
    static List<Shape.Polyline> lines(List<List<Point>> rings, double degrees, double spacing) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        List<List<Point>> turned = rings.stream()
                .map(ring -> ring.stream()
                        .map(p -> new Point(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos))
                        .toList())
                .toList();
        double least = turned.stream()
                .flatMap(List::stream)
                .mapToDouble(Point::y)
                .min()
                .orElse(0);
        double most = turned.stream()
                .flatMap(List::stream)
                .mapToDouble(Point::y)
                .max()
                .orElse(0);
        List<Shape.Polyline> lines = new ArrayList<>();
        for (double level = Math.ceil(least / spacing) * spacing; level < most; level += spacing) {
            double[] crossings = crossings(turned, level);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                if (crossings[i + 1] - crossings[i] > 0.5) {
                    lines.add(new Shape.Polyline(
                            List.of(back(crossings[i], level, cos, sin), back(crossings[i + 1], level, cos, sin)),
                            false));
                }
            }
        }
        return lines;
    }

    private static double[] crossings(List<List<Point>> rings, double level) {
        List<Double> crossings = new ArrayList<>();
        for (List<Point> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Point from = ring.get(i);
                Point to = ring.get((i + 1) % ring.size());
                if (from.y() <= level != to.y() <= level) {
                    crossings.add(from.x() + (level - from.y()) / (to.y() - from.y()) * (to.x() - from.x()));
                }
            }
        }
        return crossings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private static Point back(double x, double y, double cos, double sin) {
        return new Point(x * cos + y * sin, -x * sin + y * cos);
    }
}
