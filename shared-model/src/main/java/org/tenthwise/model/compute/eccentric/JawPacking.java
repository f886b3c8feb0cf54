package org.tenthwise.model.compute.eccentric;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The packing under one jaw of a three-jaw chuck that holds round work off centre.
 *
 * <p>√(R² − (e sin 60°)²) + 1.5 e − R, with R the radius of the work and e how far its middle is to lie off the axis.
 *
 * <p>A length to 1 nm, under the jaw that the work moves away from.
 *
 * <p>No offset takes no packing. With the axis at the edge of the work or beyond it, that jaw does not reach it.
 *
 * <p>Exact for jaws that touch along a line; wide jaws touch with their edges. Source: Thibault, "Turning an eccentric
 * hole in a 3-jaw chuck" (2000).
 */
public final class JawPacking {

    /** sin² 60°. */
    private static final double SQUARE_OF_SINE = 0.75;

    private static final double ALONG_BOTH_JAWS = 1.5;

    private JawPacking() {}

    /**
     * @param diameter more than zero
     * @param offset zero or more, less than half the diameter
     * @throws IllegalArgumentException if the jaws cannot hold it so
     */
    public static Length of(Length diameter, Length offset) {
        if (offset.signum() < 0 || !offset.isBelow(diameter.half())) {
            throw new Refused("model.jaw-packing.offset");
        }
        double radius = Nanometres.of(diameter) / 2;
        double off = Nanometres.of(offset);
        return Nanometres.round(
                Math.sqrt(radius * radius - SQUARE_OF_SINE * off * off) + ALONG_BOTH_JAWS * off - radius);
    }
}
