package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.compute.statistics.Interval;

/**
 * What so many parts show of an index of capability.
 *
 * @param index observed Cpk, or that to the one limit; absent but where there is an interval
 * @param interval at 95 %; absent below ten parts, and where an index says nothing
 * @param required what it is held against
 * @param used how much of the way from the middle to a limit the part furthest out takes, 1 on the limit; absent with
 *     one limit
 * @param asked absent where there is no index
 */
public record CapabilityShown(
        Standing standing,
        int n,
        Optional<Double> index,
        Optional<Interval> interval,
        BigDecimal required,
        Optional<BigDecimal> used,
        Optional<AskedSum> asked) {

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

    static CapabilityShown none(Standing standing, int n, BigDecimal required, Optional<BigDecimal> used) {
        return new CapabilityShown(standing, n, Optional.empty(), Optional.empty(), required, used, Optional.empty());
    }
}
