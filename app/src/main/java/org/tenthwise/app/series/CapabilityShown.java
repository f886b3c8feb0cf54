package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.statistics.Interval;
import org.tenthwise.model.compute.statistics.ToleranceUsed;

/**
 * What so many parts show of an index of capability.
 *
 * @param index observed Cpk, or that to the one limit; absent but where there is an interval
 * @param interval at 95 %; absent below ten parts, and where an index says nothing
 * @param required what it is held against
 * @param furthest the part nearest to a limit, or furthest beyond it; absent with one limit
 * @param asked absent where there is no index
 */
public record CapabilityShown(
        Standing standing,
        int n,
        Optional<Double> index,
        Optional<Interval> interval,
        BigDecimal required,
        Optional<Furthest> furthest,
        Optional<AskedSum> asked) {

    /**
     * The figure that takes most of the way from the middle to a limit.
     *
     * @param used of that way, 1 on the limit
     * @param upper whether it goes to the upper limit
     * @param beyond how far it lies outside, in the unit of the limits; zero or less where it does not
     */
    public record Furthest(BigDecimal used, boolean upper, BigDecimal beyond) {

        static Furthest of(List<BigDecimal> figures, BigDecimal lower, BigDecimal upper) {
            BigDecimal least = Collections.min(figures);
            BigDecimal greatest = Collections.max(figures);
            boolean up = greatest.subtract(upper).compareTo(lower.subtract(least)) >= 0;
            return new Furthest(
                    ToleranceUsed.byFurthest(figures, lower, upper),
                    up,
                    up ? greatest.subtract(upper) : lower.subtract(least));
        }
    }

    /** What it says. */
    public enum Standing {
        /** Fewer than ten parts: no index at all. */
        NO_INDEX_YET,
        /**
         * Zero is best, or what is allowed hangs on another size, or the limits are one size: an index says nothing.
         */
        NOT_FOR_THIS,
        /** Too few different figures, or all alike. */
        COARSE,
        /** Sizes drift or jump: the parts to come are not like those measured, whatever the index. */
        DRIFTING,
        SUPPORTS,
        CONTRADICTS,
        /** The usual answer, and no fault of the parts. */
        TOO_FEW
    }

    static CapabilityShown none(Standing standing, int n, BigDecimal required, Optional<Furthest> furthest) {
        return new CapabilityShown(
                standing, n, Optional.empty(), Optional.empty(), required, furthest, Optional.empty());
    }
}
