package org.tenthwise.model.compute.polygon;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * Across the sharp corners of a regular polygon, from across its flats.
 *
 * <p>Across flats / cos(180° / n), n sides.
 *
 * <p>A length, to 1 nm. Turned to its corners first, a polygon is no wider over them than the bar it is of.
 *
 * <p>Only an even number of sides, four or more, has flats that face each other.
 *
 * <p>Source: geometry; across corners of ASME B18.2.1 come out for hexagon and square.
 */
public final class AcrossCorners {

    private static final int FEWEST = 4;

    private AcrossCorners() {}

    /** @throws IllegalArgumentException for an odd number of sides, fewer than four, or no size */
    public static Length of(int sides, Length acrossFlats) {
        if (sides < FEWEST || sides % 2 != 0) {
            throw new Refused("model.across-corners.sides", sides);
        }
        if (acrossFlats.signum() <= 0) {
            throw new Refused("model.across-corners.flats", acrossFlats);
        }
        return Nanometres.round(Nanometres.of(acrossFlats) / Math.cos(Math.PI / sides));
    }
}
