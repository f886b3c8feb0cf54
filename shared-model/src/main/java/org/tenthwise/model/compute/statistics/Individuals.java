package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * Centre and limits of a chart of individual readings with moving ranges of two.
 *
 * <p>MR<sub>i</sub> = |x<sub>i</sub> − x<sub>i−1</sub>|; limits = mean ± 3 · mean MR / d2; the upper limit of the
 * moving ranges is D4 · mean MR.
 *
 * <p>In the unit of the readings, twenty figures. They judge the process; the tolerance judges the part.
 *
 * <p>Fewer than ten readings give no limits, ten to 24 trial limits. Equal readings give limits that are the centre. A
 * single reading has no moving range and is refused.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 6.3.2.2, with d2 = 1.128 and D4 = 3.267 as printed there; {@link Factors#EXACT}
 * has 2/√π and 1 + 3 d3/d2 in full, which brings the limits closer by a third of a thousandth.
 *
 * @param limits absent below ten readings
 */
public record Individuals(
        BigDecimal centre, BigDecimal meanMovingRange, Optional<ChartLimits> limits, LimitsStanding standing) {

    private static final BigDecimal THREE = BigDecimal.valueOf(3);

    /** How far limits from so many readings can be relied on. */
    public enum LimitsStanding {

        /** Fewer than ten readings: no limits at all. */
        NONE(2),

        /** Ten to 24: on trial, and said to be. */
        TRIAL(10),

        /** From 25 on. */
        USUAL(25);

        private final int from;

        LimitsStanding(int from) {
            this.from = from;
        }

        static LimitsStanding of(int n) {
            return n < TRIAL.from ? NONE : n < USUAL.from ? TRIAL : USUAL;
        }
    }

    /** Which factors turn the mean moving range into limits. */
    public enum Factors {

        /** To three places, as handbooks print them. */
        PRINTED(new BigDecimal("1.128"), new BigDecimal("3.267")),

        /** In full. */
        EXACT(new BigDecimal(RangeOfNormal.d2(2)), new BigDecimal(1 + 3 * RangeOfNormal.d3(2) / RangeOfNormal.d2(2)));

        private final BigDecimal d2;
        private final BigDecimal d4;

        Factors(BigDecimal d2, BigDecimal d4) {
            this.d2 = d2;
            this.d4 = d4;
        }
    }

    /** @param movingRangeUpper of the moving ranges; their lower limit is zero */
    public record ChartLimits(BigDecimal upper, BigDecimal lower, BigDecimal movingRangeUpper) {}

    /**
     * @param readings in the order the parts were made
     * @throws IllegalArgumentException if there are fewer than two
     */
    public static Individuals of(List<BigDecimal> readings, Factors factors) {
        BigDecimal meanRange = meanMovingRange(readings);
        BigDecimal centre = Summary.of(readings).mean();
        LimitsStanding standing = LimitsStanding.of(readings.size());
        BigDecimal reach = THREE.multiply(meanRange).divide(factors.d2, Precision.WORKING);
        Optional<ChartLimits> limits = standing == LimitsStanding.NONE
                ? Optional.empty()
                : Optional.of(new ChartLimits(
                        centre.add(reach).round(Precision.RESULT),
                        centre.subtract(reach).round(Precision.RESULT),
                        factors.d4.multiply(meanRange).round(Precision.RESULT)));
        return new Individuals(centre, meanRange, limits, standing);
    }

    /** @throws IllegalArgumentException if there are fewer than two */
    public static BigDecimal meanMovingRange(List<BigDecimal> readings) {
        if (readings.size() < 2) {
            throw new Refused("model.individuals.moving-range");
        }
        BigDecimal ranges = BigDecimal.ZERO;
        for (int i = 1; i < readings.size(); i++) {
            ranges = ranges.add(readings.get(i).subtract(readings.get(i - 1)).abs());
        }
        return Precision.quotient(ranges, BigDecimal.valueOf(readings.size() - 1L));
    }
}
