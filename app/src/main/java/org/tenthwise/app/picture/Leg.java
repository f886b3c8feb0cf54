package org.tenthwise.app.picture;

import java.util.stream.DoubleStream;

/** A straight piece of a line. */
record Leg(Point from, Point to) {

    /** Whether some of it lies within {@code box}. */
    boolean cuts(Box box) {
        double[] part = {0, 1};
        return isBetween(part, from.x(), to.x(), box.left(), box.right())
                && isBetween(part, from.y(), to.y(), box.top(), box.bottom());
    }

    private static boolean isBetween(double[] part, double from, double to, double least, double most) {
        if (from == to) {
            return from > least && from < most;
        }
        double one = (least - from) / (to - from);
        double other = (most - from) / (to - from);
        part[0] = Math.max(part[0], Math.min(one, other));
        part[1] = Math.min(part[1], Math.max(one, other));
        return part[0] < part[1];
    }

    /** Zero where they cross. */
    double distanceTo(Leg other) {
        if (turn(other.from) * turn(other.to) < 0 && other.turn(from) * other.turn(to) < 0) {
            return 0;
        }
        return DoubleStream.of(
                        distanceTo(other.from), distanceTo(other.to), other.distanceTo(from), other.distanceTo(to))
                .min()
                .orElseThrow();
    }

    private double distanceTo(Point spot) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((spot.x() - from.x()) * dx + (spot.y() - from.y()) * dy) / square;
        return from.towards(to, Math.min(1, Math.max(0, share))).distanceTo(spot);
    }

    /** Positive on one side of it, negative on the other. */
    private double turn(Point spot) {
        return (to.x() - from.x()) * (spot.y() - from.y()) - (to.y() - from.y()) * (spot.x() - from.x());
    }
}
