package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.tenthwise.model.words.Refused;

/**
 * How likely a steady drift is noticed at all by the slope of a {@link Trend}.
 *
 * <p>P(|T| &gt; t<sub>1−α/2,n−2</sub>), T non-central t with n − 2 degrees of freedom and δ = drift · √Sxx / (greatest
 * x − least x), the drift over the whole run in standard deviations of one reading.
 *
 * <p>A probability from 0 to 1.
 *
 * <p>Needs three points at two places or more. Five parts find a drift of three standard deviations two times in five.
 *
 * <p>Source: the t test of a slope, NBS Handbook 91, 5-4; its power is the non-central t distribution of that test.
 */
public final class DriftPower {

    private DriftPower() {}

    /** @throws IllegalArgumentException for fewer than three points, or if confidence is not between 0 and 1 */
    public static double of(Trend trend, List<BigDecimal> x, double driftInStandardDeviations, double confidence) {
        int freedom = trend.n() - 2;
        if (freedom < 1) {
            throw new Refused("model.drift-power.two-points");
        }
        double length = Collections.max(x).subtract(Collections.min(x)).doubleValue();
        double delta = driftInStandardDeviations * Math.sqrt(trend.sxx().doubleValue()) / length;
        double t = trend.t(confidence);
        NonCentralT distribution = new NonCentralT(freedom);
        return distribution.above(t, delta) + distribution.above(t, -delta);
    }
}
