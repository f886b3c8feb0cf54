package org.tenthwise.model.compute.cutting;

import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Refused;

/**
 * Where a measured size stands between metal still to cut and metal gone for good.
 *
 * <p>In size from lower to upper limit, both included; cut again beyond the limit on whose side metal is left, the
 * upper of an outside diameter and the lower of a bore; past size beyond the other.
 *
 * <p>A lower limit equal to the upper leaves one size that is in. Exact, without rounding.
 *
 * <p>Source: a limit belongs to the part that meets it, ISO 14405-1 and ASME Y14.5; cut again and past size, common
 * practice.
 */
public enum CutState {
    CUT_AGAIN,
    IN_SIZE,
    PAST_SIZE;

    /** @throws IllegalArgumentException if the upper limit is below the lower one */
    public static CutState of(Feature feature, Length lower, Length upper, Length measured) {
        if (upper.isBelow(lower)) {
            throw new Refused("model.cut-state.upper-limit", upper, lower);
        }
        if (!measured.isAbove(upper) && !measured.isBelow(lower)) {
            return IN_SIZE;
        }
        Limit beyond = measured.isAbove(upper) ? Limit.UPPER : Limit.LOWER;
        return beyond == feature.stillCutBeyond() ? CUT_AGAIN : PAST_SIZE;
    }
}
