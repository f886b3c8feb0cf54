package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether the readings hold their level: the spread of all of them against the spread from part to part.
 *
 * <p>s / (mean moving range / d2), d2 = 2/√π.
 *
 * <p>A plain number: about 1 where the level holds, above 1.5 where it drifts or jumps, since a drift swells s and
 * hardly touches the moving ranges.
 *
 * <p>Says nothing below ten readings, nor where all are alike.
 *
 * <p>Source: the ratio J. von Neumann, Annals of Mathematical Statistics 12 (1941) 367, works with, in ranges in place
 * of squares; 1.5 is common practice.
 */
public final class Steadiness {

    private static final int FEWEST = 10;
    private static final double UNSTEADY = 1.5;

    private Steadiness() {}

    /** @param readings in the order the parts were made */
    public static OptionalDouble of(List<BigDecimal> readings) {
        if (readings.size() < FEWEST) {
            return OptionalDouble.empty();
        }
        double meanRange = Individuals.meanMovingRange(readings).doubleValue();
        double sd = Summary.of(readings).sd().orElse(BigDecimal.ZERO).doubleValue();
        return meanRange == 0 ? OptionalDouble.empty() : OptionalDouble.of(sd * RangeOfNormal.d2(2) / meanRange);
    }

    /** Drift or jumps show. */
    public static boolean unsteady(List<BigDecimal> readings) {
        return of(readings).orElse(1) > UNSTEADY;
    }
}
