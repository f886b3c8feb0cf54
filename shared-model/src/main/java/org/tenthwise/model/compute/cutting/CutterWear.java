package org.tenthwise.model.compute.cutting;

import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/**
 * The change of the wear value of a milling cutter's radius that brings a pocket or a boss to size.
 *
 * <p>Inside, for a pocket: −(target − measured) / 2. Outside, for a boss: (target − measured) / 2.
 *
 * <p>Exact, on radius, to be added to the wear value that stands. A smaller value brings the cutter nearer to the wall:
 * less than zero where metal is still to come off.
 *
 * <p>A size on target changes nothing.
 *
 * <p>Source: common practice with cutter radius compensation: an error of a width or a diameter has two sides, one half
 * for each wall.
 */
public final class CutterWear {

    private CutterWear() {}

    public static Length change(Feature feature, Length measured, Length target) {
        Length half = target.minus(measured).half();
        return feature.stillCutBeyond() == Limit.UPPER ? half : half.negated();
    }
}
