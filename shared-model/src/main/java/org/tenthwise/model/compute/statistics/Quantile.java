package org.tenthwise.model.compute.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The value a distribution exceeds, or stays below, with a stated probability.
 *
 * <p>The library's own inverse stops at 1e-9; from there it is carried on to the last figures of a double, so that a
 * reject rate of a few in a million has as many figures as one of a few in a hundred.
 */
final class Quantile {

    private static final double CLOSE = 1e-6;
    private static final double LEAST = 1e-9;

    private static final Remembered<Asked, Double> STUDENT =
            new Remembered<>(asked -> exceeded(TDistribution.of(asked.freedom), asked.probability));
    private static final Remembered<Asked, Interval> CHI_SQUARED = new Remembered<>(asked -> {
        ChiSquaredDistribution distribution = ChiSquaredDistribution.of(asked.freedom);
        return new Interval(below(distribution, asked.probability), exceeded(distribution, asked.probability));
    });

    private record Asked(double freedom, double probability) {}

    private Quantile() {}

    /** The value Student's t exceeds with {@code probability}. */
    static double ofStudent(double freedom, double probability) {
        return STUDENT.of(new Asked(freedom, probability));
    }

    /** The values below and above which chi-square lies with {@code probability} each. */
    static Interval ofChiSquared(double freedom, double probability) {
        return CHI_SQUARED.of(new Asked(freedom, probability));
    }

    /** The value exceeded with {@code probability}. */
    static double exceeded(ContinuousDistribution distribution, double probability) {
        double near = distribution.inverseSurvivalProbability(probability);
        return Root.near(near, step(near), x -> distribution.survivalProbability(x) - probability);
    }

    /** The value not reached with {@code probability}. */
    static double below(ContinuousDistribution distribution, double probability) {
        double near = distribution.inverseCumulativeProbability(probability);
        return Root.near(near, step(near), x -> distribution.cumulativeProbability(x) - probability);
    }

    private static double step(double near) {
        return Math.max(LEAST, Math.abs(near) * CLOSE);
    }
}
