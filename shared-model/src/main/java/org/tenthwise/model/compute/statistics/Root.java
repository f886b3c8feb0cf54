package org.tenthwise.model.compute.statistics;

import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import org.tenthwise.model.words.Unworkable;

/**
 * Where a function that only rises, or only falls, is zero.
 *
 * <p>Bracketed first by steps that double, then narrowed by inverse quadratic interpolation where that is safe and by
 * halving where it is not: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145. Where the slope comes
 * with the value, Newton's steps are tried first.
 */
final class Root {

    private static final int MOST_STEPS = 200;
    private static final double FINE = 1e-14;
    private static final int MOST_NEWTON = 8;
    /** Where a step is as small as this, what is left to go is beyond the last figure of a double. */
    private static final double HALF_OF_THE_FIGURES = 1e-9;

    private Root() {}

    /**
     * By Newton's steps, each of which doubles the figures that are right; by {@code otherwise} where they do not
     * settle.
     *
     * @param near where to begin
     * @param stepFrom how far Newton goes from a place; no number where that is not known
     */
    static double byNewton(double near, DoubleUnaryOperator stepFrom, DoubleSupplier otherwise) {
        double place = near;
        for (int i = 0; i < MOST_NEWTON && Double.isFinite(place); i++) {
            double step = stepFrom.applyAsDouble(place);
            place += step;
            if (Math.abs(step) <= HALF_OF_THE_FIGURES * Math.abs(place)) {
                return place;
            }
        }
        return otherwise.getAsDouble();
    }

    /**
     * @param near where to begin
     * @param step how far the root may well lie from there; more than zero
     * @throws ArithmeticException if no root is found
     */
    static double near(double near, double step, DoubleUnaryOperator function) {
        double low = near - step;
        double high = near + step;
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        boolean rising = atHigh > atLow;
        double stride = step;
        for (int i = 0; i < MOST_STEPS && atLow * atHigh > 0; i++) {
            stride *= 2;
            if (atLow > 0 == rising) {
                high = low;
                atHigh = atLow;
                low -= stride;
                atLow = function.applyAsDouble(low);
            } else {
                low = high;
                atLow = atHigh;
                high += stride;
                atHigh = function.applyAsDouble(high);
            }
        }
        if (!(atLow * atHigh <= 0)) {
            throw new Unworkable("model.root.no-value");
        }
        return between(low, atLow, high, atHigh, function);
    }

    private static double between(double low, double atLow, double high, double atHigh, DoubleUnaryOperator function) {
        double a = high;
        double fa = atHigh;
        double b = low;
        double fb = atLow;
        double share = 0.5;
        for (int i = 0; i < MOST_STEPS; i++) {
            double x = a + share * (b - a);
            double fx = function.applyAsDouble(x);
            double c;
            double fc;
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double tolerance = FINE * Math.max(Math.abs(best), FINE) / Math.abs(b - c);
            if (fa == 0 || tolerance > 0.5 || a == b) {
                return fa == 0 ? a : best;
            }
            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            boolean interpolate = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
            share = interpolate
                    ? fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
                    : 0.5;
            share = Math.min(1 - tolerance, Math.max(tolerance, share));
        }
        return a;
    }
}
