package org.tenthwise.model.compute.comparison;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * How much too small a two-point bore gauge reads when its points stand beside the middle of the bore.
 *
 * <p>Too small by D − √(D² − 4c²) for points that lie on a chord at a distance c from the middle, worked as 4c² / (D +
 * √(D² − 4c²)), which loses nothing where c is small.
 *
 * <p>A length to 1 nm, zero or more; to be put on to the reading.
 *
 * <p>Points on the middle give zero. It grows with the square of the distance.
 *
 * <p>Source: geometry of a chord; <em>common practice</em> is to swing the gauge sideways and to take the greatest
 * reading, which takes it away.
 */
public final class OffCentre {

    private OffCentre() {}

    /** Whether points that far off the middle still stand in the bore. */
    public static boolean touches(Length diameter, Length offCentre) {
        return offCentre.abs().isBelow(diameter.half());
    }

    /**
     * @param offCentre distance of the chord from the middle; its sign does not matter
     * @throws IllegalArgumentException for a bore of nothing, or a chord that lies outside it
     */
    public static Length readsLess(Length diameter, Length offCentre) {
        if (diameter.signum() <= 0) {
            throw new Refused("model.off-centre.diameter-bore", diameter);
        }
        if (!touches(diameter, offCentre)) {
            throw new Refused("model.off-centre.off-centre", offCentre, diameter);
        }
        double whole = Nanometres.of(diameter);
        double twice = 2 * Nanometres.of(offCentre);
        return Nanometres.round(twice * twice / (whole + Math.sqrt((whole - twice) * (whole + twice))));
    }
}
