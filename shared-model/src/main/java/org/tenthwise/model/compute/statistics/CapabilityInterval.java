package org.tenthwise.model.compute.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.words.Refused;

/**
 * Between what bounds the true index lies when one was observed in n parts.
 *
 * <p>Cp: Cp √(χ²<sub>α/2,ν</sub>/ν) to Cp √(χ²<sub>1−α/2,ν</sub>/ν), ν = n − 1, χ² by the probability below it. Cpk:
 * Cpk ± z<sub>1−α/2</sub> √(1/(9n) + Cpk²/(2ν)). Lower bound of an index to one limit, exactly: the C with P(T &gt; 3
 * Cpk √n) = α where T is non-central t with ν degrees of freedom and δ = 3 C √n.
 *
 * <p>Plain numbers.
 *
 * <p>Two parts or more. Up to about 50 the interval is wide, and that of Cpk, which rests on the normal distribution,
 * is a fair approximation only.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 6.1.6; Cpk, A. F. Bissell, Applied Statistics 39 (1990) 331; exact lower bound,
 * Y. M. Chou, D. B. Owen and S. A. Borrego, Journal of Quality Technology 22 (1990) 223. α is halved for an interval
 * and is whole for the one-sided bound; mixing them up is the usual mistake with these formulas.
 */
public final class CapabilityInterval {

    private CapabilityInterval() {}

    /** @throws IllegalArgumentException if n is below 2 or confidence is not between 0 and 1 */
    public static Interval ofCp(double cp, int n, double confidence) {
        double tail = (1 - checked(n, confidence)) / 2;
        double nu = n - 1;
        Interval chiSquared = Quantile.ofChiSquared(nu, tail);
        return new Interval(cp * Math.sqrt(chiSquared.low() / nu), cp * Math.sqrt(chiSquared.high() / nu));
    }

    /** @throws IllegalArgumentException if n is below 2 or confidence is not between 0 and 1 */
    public static Interval ofCpk(double cpk, int n, double confidence) {
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - checked(n, confidence)) / 2);
        double reach = z * Math.sqrt(1 / (9.0 * n) + cpk * cpk / (2 * (n - 1.0)));
        return new Interval(cpk - reach, cpk + reach);
    }

    /** @throws IllegalArgumentException if n is below 2 or confidence is not between 0 and 1 */
    public static double exactLowerBound(double index, int n, double confidence) {
        double scale = 3 * Math.sqrt(n);
        return new NonCentralT(n - 1).deltaExceeding(scale * index, 1 - checked(n, confidence)) / scale;
    }

    private static double checked(int n, double confidence) {
        if (n < 2) {
            throw new Refused("model.capability-interval.n-index", n);
        }
        return Share.check("confidence", confidence);
    }
}
