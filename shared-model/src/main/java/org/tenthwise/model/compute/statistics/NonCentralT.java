package org.tenthwise.model.compute.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Student's t where the mean is off zero: T = (Z + δ) / V, with Z standard normal and V = √(χ²<sub>ν</sub> / ν).
 *
 * <p>P(T &gt; t) = ∫ Φ(δ − t v) f(v) dv, f the density of V.
 *
 * <p>A probability from 0 to 1; t and δ of any sign.
 *
 * <p>δ = 0 gives Student's t, t = 0 gives Φ(δ). Right to ten figures from ν = 1 up, also where δ is far beyond 37,
 * where series for the same probability lose theirs.
 *
 * <p>Source: N. L. Johnson, S. Kotz and N. Balakrishnan, Continuous Univariate Distributions 2, ch. 31. Integrated only
 * where Φ(δ − t v) is neither 0 nor 1; below that the χ² distribution gives the whole part.
 */
final class NonCentralT {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** Standard deviations beyond which nothing is left that counts in a double. */
    private static final double REACH = 9;

    /** How many of the narrower of the two features go into a panel; more would cost the eleventh figure. */
    private static final double FEATURES = 1.5;

    private final double nu;
    private final ChiSquaredDistribution chiSquared;
    private final double spread;
    private final double densityAtOne;

    NonCentralT(int degreesOfFreedom) {
        this.nu = degreesOfFreedom;
        this.chiSquared = ChiSquaredDistribution.of(nu);
        this.spread = 1 / Math.sqrt(2 * nu);
        this.densityAtOne = 2 * nu * chiSquared.density(nu);
    }

    /** P(T &gt; t). */
    double above(double t, double delta) {
        if (t == 0) {
            return NORMAL.cumulativeProbability(delta);
        }
        if (t < 0) {
            return 1 - above(-t, -delta);
        }
        double from = within((delta - REACH) / t);
        double to = within((delta + REACH) / t);
        double certain = chiSquared.cumulativeProbability(nu * from * from);
        if (from == to) {
            return certain;
        }
        return certain
                + Panels.integral(
                        v -> NORMAL.cumulativeProbability(delta - t * v) * density(v), from, to, panels(t, delta));
    }

    private int panels(double t, double delta) {
        double width = within((delta + REACH) / t) - within((delta - REACH) / t);
        return (int) Math.ceil(width / Math.min(spread, 1 / t) / FEATURES);
    }

    /** The δ with which t is exceeded with {@code probability}. */
    double deltaExceeding(double t, double probability) {
        return Root.byNewton(
                t,
                delta -> step(t, delta, probability, v -> 1),
                () -> Root.near(t, width(t), delta -> above(t, delta) - probability));
    }

    /** The t that is exceeded with {@code probability} where the mean is off by {@code delta}. */
    double exceeded(double probability, double delta) {
        return Root.byNewton(
                delta,
                t -> step(t, delta, probability, v -> -v),
                () -> Root.near(delta, width(delta), t -> above(t, delta) - probability));
    }

    /**
     * Newton's step of the probability as a place of the standard normal distribution, where it is nearly straight.
     *
     * @param inside slope of δ − t v by what is looked for
     */
    private double step(double t, double delta, double probability, DoubleUnaryOperator inside) {
        double above = t > 0 ? above(t, delta) : 0;
        if (above <= 0 || above >= 1) {
            return Double.NaN;
        }
        double place = NORMAL.inverseCumulativeProbability(above);
        double slope = Panels.integral(
                v -> NORMAL.density(delta - t * v) * inside.applyAsDouble(v) * density(v),
                within((delta - REACH) / t),
                within((delta + REACH) / t),
                panels(t, delta));
        return (NORMAL.inverseCumulativeProbability(probability) - place) * NORMAL.density(place) / slope;
    }

    private double width(double place) {
        return Math.sqrt(1 + place * place * spread * spread);
    }

    private double within(double v) {
        return Math.min(1 + REACH * spread, Math.max(Math.max(0, 1 - REACH * spread), v));
    }

    /** Of V, from its value at 1, where nothing large has to cancel. */
    private double density(double v) {
        return densityAtOne * Math.exp((nu - 1) * Math.log(v) - nu * (v - 1) * (v + 1) / 2);
    }
}
