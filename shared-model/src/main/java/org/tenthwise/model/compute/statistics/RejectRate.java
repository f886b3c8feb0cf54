package org.tenthwise.model.compute.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.tenthwise.model.words.Refused;

/**
 * Between what bounds the share of rejects lies when so many of so many parts were rejects.
 *
 * <p>No reject in n: upper = 1 − α<sup>1/n</sup>, lower = 0, with the whole α = 1 − confidence above the one bound
 * asked for. Else, with α/2 at each end: lower is the α/2 quantile of the beta distribution with x and n − x + 1, upper
 * the 1 − α/2 quantile of that with x + 1 and n − x. All n rejects: lower = (α/2)<sup>1/n</sup>, and upper = 1 leaves
 * nothing beyond it.
 *
 * <p>Plain numbers from 0 to 1.
 *
 * <p>One part says next to nothing: no reject in one leaves up to 95 %.
 *
 * <p>Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404; NIST/SEMATECH e-Handbook 7.2.4.2. Exact for any
 * n; the rule of three, 3/n, is this for no reject at 95 %, a little large.
 */
public record RejectRate(double lower, double upper) {

    /**
     * @param n parts checked, one or more
     * @param rejects from 0 to {@code n}
     * @param confidence between 0 and 1
     */
    public static RejectRate of(int n, int rejects, double confidence) {
        if (n < 1 || rejects < 0 || rejects > n) {
            throw new Refused("model.reject-rate.rejects-cannot", rejects, n);
        }
        Share.check("confidence", confidence);
        double alpha = 1 - confidence;
        if (rejects == 0) {
            return new RejectRate(0, -Math.expm1(Math.log(alpha) / n));
        }
        if (rejects == n) {
            return new RejectRate(Math.exp(Math.log(alpha / 2) / n), 1);
        }
        return new RejectRate(
                Quantile.below(BetaDistribution.of(rejects, n - rejects + 1.0), alpha / 2),
                Quantile.exceeded(BetaDistribution.of(rejects + 1.0, n - rejects), alpha / 2));
    }
}
