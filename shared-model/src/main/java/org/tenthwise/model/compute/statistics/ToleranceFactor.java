package org.tenthwise.model.compute.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.words.Refused;

/**
 * How many standard deviations to go from the mean so that a stated share of all parts is covered with a stated
 * confidence.
 *
 * <p>Both sides: the k with which mean ± k s covers the share with the confidence, by an integral over mean and spread
 * ({@link BothSides}). One side: k = t<sub>c</sub>(ν; δ = z<sub>p</sub> √n) / √n, t the quantile of the non-central t
 * distribution. Both are exact. Howe: k ≈ z<sub>(1+p)/2</sub> √(ν (1 + 1/n) / χ²<sub>1−c,ν</sub>), ν = n − 1, both
 * sides; to say how far off it is.
 *
 * <p>A plain number; the interval is mean ± k s, or one end of it.
 *
 * <p>For normal parts only. Of two readings, and 90 to 99.73 % covered, Howe's factor is 3 to 9 % too large.
 *
 * <p>Source: ISO 16269-6:2014, both sides Annex F; R. E. Odeh and D. B. Owen, Tables for Normal Tolerance Limits,
 * Sampling Plans, and Screening, 1980. Howe: Journal of the American Statistical Association 64 (1969) 610;
 * NIST/SEMATECH e-Handbook 7.2.6.3. The approximate one-sided factor of the e-Handbook (M. G. Natrella) is not used:
 * the exact one costs no more here.
 */
public final class ToleranceFactor {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final Remembered<Asked, Double> BOTH_SIDES =
            new Remembered<>(asked -> new BothSides(asked.n, asked.cover)
                    .factor(1 - asked.confidence, byHowe(asked.n, asked.cover, asked.confidence)));
    private static final Remembered<Asked, Double> ONE_SIDE = new Remembered<>(ToleranceFactor::ofOneSide);

    private record Asked(int n, double cover, double confidence) {}

    private ToleranceFactor() {}

    /** @throws IllegalArgumentException if n is below 2, or cover or confidence is not between 0 and 1 */
    public static double bothSides(int n, double cover, double confidence) {
        check(n, cover, confidence);
        return BOTH_SIDES.of(new Asked(n, cover, confidence));
    }

    /**
     * The approximation many tables and sheets print for both sides.
     *
     * @throws IllegalArgumentException if n is below 2, or cover or confidence is not between 0 and 1
     */
    public static double byHowe(int n, double cover, double confidence) {
        check(n, cover, confidence);
        double nu = n - 1;
        double z = NORMAL.inverseSurvivalProbability((1 - cover) / 2);
        return z * Math.sqrt(nu * (1 + 1.0 / n) / Quantile.below(ChiSquaredDistribution.of(nu), 1 - confidence));
    }

    /** @throws IllegalArgumentException if n is below 2, or cover or confidence is not between 0 and 1 */
    public static double oneSide(int n, double cover, double confidence) {
        check(n, cover, confidence);
        return ONE_SIDE.of(new Asked(n, cover, confidence));
    }

    private static double ofOneSide(Asked asked) {
        double root = Math.sqrt(asked.n);
        double offset = NORMAL.inverseCumulativeProbability(asked.cover) * root;
        return new NonCentralT(asked.n - 1).exceeded(1 - asked.confidence, offset) / root;
    }

    private static void check(int n, double cover, double confidence) {
        if (n < 2) {
            throw new Refused("model.tolerance-factor.n-tolerance", n);
        }
        Share.check("cover", cover);
        Share.check("confidence", confidence);
    }
}
