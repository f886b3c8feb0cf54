package org.tenthwise.model.record;

import org.tenthwise.model.compute.position.PositionDeviation;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.quantity.Length;

/**
 * An axis as it was read at one end, both X and Y.
 *
 * @param bonus what its size adds to the zone; zero without a modifier, and while the size is not known
 * @param allowed the zone with that
 */
public record AtPoint(
        PositionCheck.AxisAt point,
        Measured first,
        Measured second,
        PositionDeviation deviation,
        Length bonus,
        Length allowed) {

    /** Whether it lies inside the zone with its bonus; on the edge is inside. */
    public boolean isInside() {
        return deviation.isWithin(allowed);
    }

    /** What is left of the zone with its bonus; less than zero outside. */
    public Length room() {
        return allowed.minus(deviation.diameter());
    }
}
