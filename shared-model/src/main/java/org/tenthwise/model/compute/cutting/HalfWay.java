package org.tenthwise.model.compute.cutting;

import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The first of two like cuts to size: half of what is left now, and after a measurement the other half.
 *
 * <p>Change on diameter = (aim − measured) / 2, on radius half of that; size expected after it = measured + the change.
 *
 * <p>Exact; signs as in {@link NextCut}.
 *
 * <p>With nothing left before the aim there is no first cut.
 *
 * <p>Source: common practice. Both cuts take the same chip, so tool and part give way by the same amount, and what the
 * first cut left over or took too much the second will again: it shows in the measurement between them.
 *
 * @param expectedSize half-way between the size measured and the aim
 */
public record HalfWay(Length changeOnDiameter, Length changeOnRadius, Length expectedSize) {

    /** @throws IllegalArgumentException if nothing is left to come off */
    public static HalfWay of(Feature feature, Length measured, Length aim) {
        NextCut whole = NextCut.of(feature, measured, aim);
        if (whole.stockLeft().signum() == 0) {
            throw new Refused("model.half-way.nothing-left", measured, aim);
        }
        return new HalfWay(
                whole.changeOnDiameter().half(),
                whole.changeOnRadius().half(),
                measured.plus(whole.changeOnDiameter().half()));
    }
}
