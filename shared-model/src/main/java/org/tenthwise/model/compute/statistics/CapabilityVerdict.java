package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;

/**
 * What an interval of an index says about a required one. Three answers, not two: that there are too few parts to tell
 * is the usual one, and no fault of the parts.
 */
public enum CapabilityVerdict {

    /** The whole interval is at or above what is required. */
    SUPPORTS,

    /** The whole interval is below. */
    CONTRADICTS,

    /** What is required lies inside the interval, or there are fewer than five parts. */
    TOO_FEW;

    /** Below this many parts nothing is said about the next ones. */
    public static final int FEWEST_PARTS = 5;

    /** @param interval of the observed index, from {@code n} parts */
    public static CapabilityVerdict of(Interval interval, int n, BigDecimal required) {
        if (n < FEWEST_PARTS) {
            return TOO_FEW;
        }
        if (new BigDecimal(interval.low()).compareTo(required) >= 0) {
            return SUPPORTS;
        }
        return new BigDecimal(interval.high()).compareTo(required) < 0 ? CONTRADICTS : TOO_FEW;
    }
}
