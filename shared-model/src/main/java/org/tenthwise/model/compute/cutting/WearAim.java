package org.tenthwise.model.compute.cutting;

import java.math.BigDecimal;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Refused;

/**
 * Where to start a run of parts whose size drifts as the edge wears, and where to set the tool anew.
 *
 * <p>A worn edge leaves metal on: an outside grows from the lower limit, an inside shrinks from the upper one. With
 * standard deviation s from part to part and expanded uncertainty U of the measurement, both ends keep 3 s + U from
 * their limit: start at the limit that wear leads away from, reset at the one it leads to. Room for wear is what lies
 * between.
 *
 * <p>Exact sizes; the room is zero or more.
 *
 * <p>With s and U of zero the whole tolerance is room. Where 3 s + U from both sides meet there is no such aim.
 *
 * <p>Source: common practice with charts of tool wear: the tool is set anew three standard deviations before the limit,
 * here with the uncertainty of the measurement taken off as ISO 14253-1 takes it.
 *
 * @param start first aim with a fresh edge
 * @param reset size at which the tool is set back to {@code start}
 * @param room distance between the two
 */
public record WearAim(Length start, Length reset, Length room) {

    private static final BigDecimal DEVIATIONS = BigDecimal.valueOf(3);

    /**
     * @throws IllegalArgumentException if one of the two spreads is less than zero, or they leave no room between the
     *     limits
     */
    public static WearAim of(
            Feature feature, Length lower, Length upper, Length deviation, Length expandedUncertainty) {
        if (deviation.signum() < 0 || expandedUncertainty.signum() < 0) {
            throw new Refused("model.wear-aim.neither-standard", deviation, expandedUncertainty);
        }
        Length kept = deviation.times(DEVIATIONS).plus(expandedUncertainty);
        Length low = lower.plus(kept);
        Length high = upper.minus(kept);
        if (low.isAbove(high)) {
            throw new Refused("model.wear-aim.three-standard", kept, lower, upper);
        }
        boolean grows = feature.stillCutBeyond() == Limit.UPPER;
        return new WearAim(grows ? low : high, grows ? high : low, high.minus(low));
    }
}
