package org.tenthwise.model.compute.cutting;

import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/**
 * What is left to come off, and the change of the tool offset that takes it off.
 *
 * <p>Change on diameter = aim − measured, for an outside and a bore alike. Change on radius = half of it. Stock left =
 * measured − aim for an outside diameter, aim − measured for a bore, a width or a depth, and zero where that is less.
 *
 * <p>Exact. The sign of the change is that of an X offset that counts away from the axis; which of the two changes to
 * type depends on whether the register is in diameters or in radii. For a width or a depth the change is the growth
 * wanted in the size itself, and which register it goes into is the machine's business.
 *
 * <p>A measured size equal to the aim gives zero throughout. Work already past the aim has no stock left; the change
 * then brings the tool back for the next part.
 *
 * <p>Source: common practice with turning controls programmed on diameter. "Opposite signs for outside and inside" is
 * often taught and wrong where X counts away from the axis on both.
 *
 * @param stockLeft zero or more; on diameter for an outside and a bore
 */
public record NextCut(Length aim, Length stockLeft, Length changeOnDiameter, Length changeOnRadius) {

    public static NextCut of(Feature feature, Length measured, Length aim) {
        Length change = aim.minus(measured);
        Length stock = feature.stillCutBeyond() == Limit.UPPER ? change.negated() : change;
        return new NextCut(aim, stock.signum() > 0 ? stock : Length.ZERO, change, change.half());
    }
}
