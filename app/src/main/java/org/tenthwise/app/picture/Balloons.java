package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places for the numbers of features: in a row above the part and one below, in the order of their spots from left to
 * right, far enough apart to be read, and so that no two leader lines of a row cross.
 */
final class Balloons {

    /** A feature that wants a number. */
    record Wanted(String number, OutlineFeature feature) {}

    /** A number with its place. */
    record Placed(String number, Point centre, Point spot) {}

    private final double left;
    private final double right;
    private final double apart;

    /** @param apart least distance of two centres */
    Balloons(double left, double right, double apart) {
        this.left = left;
        this.right = right;
        this.apart = apart;
    }

    /** @param axis height of the axis, on which spots are mirrored that are numbered below */
    List<Placed> place(List<Wanted> wanted, double above, double below, double axis) {
        List<Placed> top = new ArrayList<>();
        List<Placed> bottom = new ArrayList<>();
        for (Wanted one : wanted.stream()
                .sorted(Comparator.comparing((Wanted w) -> w.feature().side() == OutlineFeature.Side.EITHER)
                        .thenComparing(w -> w.feature().spot().x()))
                .toList()) {
            Point spot = one.feature().spot();
            boolean goesBelow =
                    switch (one.feature().side()) {
                        case ABOVE -> false;
                        case BELOW -> true;
                        case EITHER -> crowd(bottom, spot) < crowd(top, spot);
                    };
            if (goesBelow) {
                bottom.add(
                        new Placed(one.number(), spot, new Point(spot.x(), Math.max(spot.y(), 2 * axis - spot.y()))));
            } else {
                top.add(new Placed(one.number(), spot, spot));
            }
        }
        List<Placed> placed = new ArrayList<>(spread(top, above));
        placed.addAll(spread(bottom, below));
        return placed;
    }

    /** How many of a row stand where one at {@code spot} would. */
    private double crowd(List<Placed> row, Point spot) {
        return row.stream()
                .filter(other -> Math.abs(other.spot().x() - spot.x()) < 3 * apart)
                .count();
    }

    private List<Placed> spread(List<Placed> row, double y) {
        List<Placed> sorted = row.stream()
                .sorted(Comparator.comparingDouble((Placed p) -> p.spot().x()))
                .toList();
        double[] x = sorted.stream().mapToDouble(p -> p.spot().x()).toArray();
        double step = Math.min(apart, x.length > 1 ? (right - left) / (x.length - 1) : apart);
        for (int pass = 0; pass < 200; pass++) {
            for (int i = 1; i < x.length; i++) {
                double lack = step - (x[i] - x[i - 1]);
                if (lack > 0) {
                    x[i - 1] -= lack / 2;
                    x[i] += lack / 2;
                }
            }
            for (int i = 0; i < x.length; i++) {
                x[i] = Math.min(Math.max(x[i], left + i * step), right - (x.length - 1 - i) * step);
            }
        }
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            placed.add(new Placed(
                    sorted.get(i).number(), new Point(x[i], y), sorted.get(i).spot()));
        }
        return uncrossed(placed);
    }

    /** Two leaders that cross change their numbers' places; each change makes the leaders shorter, so this ends. */
    private static List<Placed> uncrossed(List<Placed> row) {
        List<Placed> places = new ArrayList<>(row);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < places.size(); i++) {
                for (int j = i + 1; j < places.size(); j++) {
                    Placed one = places.get(i);
                    Placed other = places.get(j);
                    if (cross(one.centre(), one.spot(), other.centre(), other.spot())) {
                        places.set(i, new Placed(one.number(), other.centre(), one.spot()));
                        places.set(j, new Placed(other.number(), one.centre(), other.spot()));
                        changed = true;
                    }
                }
            }
        }
        return places;
    }

    static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) * side(a, b, d) < -1e-9 && side(c, d, a) * side(c, d, b) < -1e-9;
    }

    private static double side(Point from, Point to, Point spot) {
        return (to.x() - from.x()) * (spot.y() - from.y()) - (to.y() - from.y()) * (spot.x() - from.x());
    }
}
