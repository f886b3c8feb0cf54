package org.tenthwise.model.compute.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * A definite integral, panel by panel with eight points each.
 *
 * <p>Source: Gauss-Legendre quadrature, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, Table 25.4:
 * exact for polynomials to the fifteenth power, so a smooth function comes out to the last figures where a panel is no
 * wider than its features.
 */
final class Panels {

    private static final double[] POINTS = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    private Panels() {}

    /** Takes one point of the integral: where it stands and what it counts. */
    @FunctionalInterface
    interface Node {
        void at(double place, double weight);
    }

    static double integral(DoubleUnaryOperator function, double from, double to, int panels) {
        double[] sum = {0};
        each(from, to, panels, (place, weight) -> sum[0] += weight * function.applyAsDouble(place));
        return sum[0];
    }

    static void each(double from, double to, int panels, Node point) {
        double half = (to - from) / panels / 2;
        for (int panel = 0; panel < panels; panel++) {
            double middle = from + (2 * panel + 1) * half;
            for (int i = 0; i < POINTS.length; i++) {
                point.at(middle - POINTS[i] * half, WEIGHTS[i] * half);
                point.at(middle + POINTS[i] * half, WEIGHTS[i] * half);
            }
        }
    }
}
