package org.tenthwise.model.compute.statistics;

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
        int[] at = {0};
        Panels.each(0, REACH, PANELS, (u, weight) -> {
            double half = halfWidth(u / Math.sqrt(n), outside, least);
            weights[at[0]] = weight * 2 * NORMAL.density(u);
            squares[at[0]++] = half * half;
        });
    }

    /**
     * The r that leaves {@code outside} beyond it where the mean is off; it lies between the one of no offset and that
     * and the offset.
     */
    private static double halfWidth(double off, double outside, double least) {
        return Root.near(
                least + off / 2,
                Math.max(off / 2, 1e-3),
                r -> NORMAL.survivalProbability(off + r) + NORMAL.cumulativeProbability(off - r) - outside);
    }

    /** The k with which less than the share is covered with probability {@code missing}. */
    double factor(double missing, double near) {
        return Root.near(near, near / 50, k -> coversLess(k) - missing);
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
