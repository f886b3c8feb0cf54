package org.tenthwise.model.compute.gear;

import org.tenthwise.model.words.Refused;

/**
 * The involute function and its inverse.
 *
 * <p>inv x = tan x − x. Back by Newton's method, from the side on which it cannot overshoot, to 1e-15.
 *
 * <p>Radians, 0 to less than a quarter turn.
 *
 * <p>Near zero inv x is x³/3, and its inverse the cube root of three times it.
 *
 * <p>Source: ISO 21771; involute of 23.8707609654° there 0.0259052382.
 */
final class Involute {

    private static final int MOST_STEPS = 100;
    private static final double CLOSE = 1e-15;
    private static final double SMALL = 1e-3;

    private Involute() {}

    static double of(double angle) {
        double square = angle * angle;
        return angle < SMALL
                ? angle * square * (1.0 / 3 + square * (2.0 / 15 + square * 17 / 315))
                : Math.tan(angle) - angle;
    }

    /** @throws IllegalArgumentException if {@code involute} is less than zero */
    static double angle(double involute) {
        if (involute < 0) {
            throw new Refused("model.involute.negative");
        }
        double angle = Math.atan(Math.cbrt(3 * involute) + involute);
        for (int i = 0; i < MOST_STEPS && angle > 0; i++) {
            double tangent = Math.tan(angle);
            double step = (of(angle) - involute) / (tangent * tangent);
            angle -= step;
            if (Math.abs(step) <= CLOSE * Math.max(1, angle)) {
                break;
            }
        }
        return angle;
    }
}
