package org.tenthwise.model.compute.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How sure it is that mean ± k s of n normal readings covers a share p of all parts.
 *
 * <p>P(covers less) = ∫ 2 φ(u) P(χ²<sub>ν</sub> ≤ ν r² / k²) du over u ≥ 0, where the mean is off by u / √n standard
 * deviations and r is the half width that covers p from there: Φ(u/√n + r) − Φ(u/√n − r) = p; ν = n − 1.
 *
 * <p>Plain numbers.
 *
 * <p>r does not depend on k, so it is worked out once for each place of the integral. Beyond nine standard deviations
 * of the mean nothing is left that counts in a double.
 *
 * <p>Source: R. E. Odeh and D. B. Owen, Tables for Normal Tolerance Limits, Sampling Plans, and Screening, 1980; the
 * factors are those of ISO 16269-6:2014, Annex F.
 */
final class BothSides {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final double REACH = 9;
    private static final int PANELS = 12;
    private static final int PLACES = PANELS * 8;

    private final double nu;
    private final ChiSquaredDistribution chiSquared;
    private final double[] weights = new double[PLACES];
    private final double[] squares = new double[PLACES];

    BothSides(int n, double cover) {
        this.nu = n - 1;
        this.chiSquared = ChiSquaredDistribution.of(nu);
        double outside = 1 - cover;
        double least = NORMAL.inverseSurvivalProbability(outside / 2);
        double ofOneEnd = NORMAL.inverseSurvivalProbability(outside);
        int[] at = {0};
        Panels.each(0, REACH, PANELS, (u, weight) -> {
            double half = halfWidth(u / Math.sqrt(n), outside, least, ofOneEnd);
            weights[at[0]] = weight * 2 * NORMAL.density(u);
            squares[at[0]++] = half * half;
        });
    }

    /**
     * The r that leaves {@code outside} beyond it where the mean is off; it lies between the one of no offset and that
     * and the offset.
     */
    private static double halfWidth(double off, double outside, double least, double ofOneEnd) {
        DoubleUnaryOperator beyond = r -> NORMAL.survivalProbability(off + r) + NORMAL.cumulativeProbability(off - r);
        return Root.byNewton(
                Math.max(least, off + ofOneEnd),
                r -> (beyond.applyAsDouble(r) - outside) / (NORMAL.density(off + r) + NORMAL.density(off - r)),
                () -> Root.near(least + off / 2, Math.max(off / 2, 1e-3), r -> beyond.applyAsDouble(r) - outside));
    }

    /** The k with which less than the share is covered with probability {@code missing}. */
    double factor(double missing, double near) {
        return Root.byNewton(
                near, k -> step(k, missing), () -> Root.near(near, near / 50, k -> coversLess(k) - missing));
    }

    /** Newton's step of the logarithm of the probability, which is nearly straight. */
    private double step(double k, double missing) {
        double less = 0;
        double slope = 0;
        for (int i = 0; i < PLACES; i++) {
            double x = nu * squares[i] / (k * k);
            less += weights[i] * chiSquared.cumulativeProbability(x);
            slope += weights[i] * chiSquared.density(x) * 2 * x / k;
        }
        return less * Math.log(less / missing) / slope;
    }

    private double coversLess(double k) {
        if (k <= 0) {
            return 1;
        }
        double sum = 0;
        for (int i = 0; i < PLACES; i++) {
            sum += weights[i] * chiSquared.cumulativeProbability(nu * squares[i] / (k * k));
        }
        return sum;
    }
}
