package org.tenthwise.model.compute.statistics;

import org.tenthwise.model.words.Refused;

/**
 * The factors of control charts with ranges, for groups of n readings.
 *
 * <p>d2 and d3: mean and standard deviation of the range of n normal readings; A2 = 3 / (d2 √n); D3 = 1 − 3 d3/d2, not
 * below zero; D4 = 1 + 3 d3/d2; E2 = 3 / d2.
 *
 * <p>Plain numbers.
 *
 * <p>From 2 to 100 readings a group. D3 is zero up to six.
 *
 * <p>Source: ASTM E2587 and ISO 7870-2, tables of factors. Worked out in full: printed tables round, and differ in the
 * last place where they were worked out from rounded d2 and d3.
 *
 * @param d3Lower the factor D3 of the lower limit of ranges
 * @param d4Upper the factor D4 of the upper limit of ranges
 */
public record ChartConstants(double d2, double d3, double a2, double d3Lower, double d4Upper, double e2) {

    /** The largest group there are factors for. */
    public static final int MOST_READINGS = RangeOfNormal.MOST;

    private static final int LIMITS_AT = 3;

    /** @throws IllegalArgumentException if n is not from 2 to {@value #MOST_READINGS} */
    public static ChartConstants of(int n) {
        if (n < 2 || n > MOST_READINGS) {
            throw new Refused("model.chart-constants.n-factors", n, MOST_READINGS);
        }
        double d2 = RangeOfNormal.d2(n);
        double d3 = RangeOfNormal.d3(n);
        double part = LIMITS_AT * d3 / d2;
        return new ChartConstants(
                d2, d3, LIMITS_AT / (d2 * Math.sqrt(n)), Math.max(0, 1 - part), 1 + part, LIMITS_AT / d2);
    }
}
