package org.tenthwise.model.compute.keyway;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * The depth of a keyway in a shaft of diameter D and of width W, by every way a drawing gives it.
 *
 * <p>The flat crest over the keyway is lower than the crest of the shaft by Y = (D − √(D² − W²)) / 2. From the far side
 * of the shaft to the floor is S; from the crest it is t = D − S deep, at the side wall t − Y. For a key of height H
 * half sunk at the side wall, S = D − Y − H/2; from the far side of the bore of the hub to the roof of its keyway it is
 * D − Y + H/2 and 0.005 in of clearance with a parallel key, and D − Y + H/2 less 0.020 in with a taper key.
 *
 * <p>Lengths, to 1 nm. Depth judged from the crest wants the measured D of the shaft; S given on the drawing does not.
 *
 * <p>A keyway is narrower than the shaft. One wide for its shaft has a side wall that is much less deep than the crest.
 *
 * <p>Source: ASME B17.1-1967 (R2013), in Machinery's Handbook, 31st ed., p. 2552, table 2: every one of its entries for
 * square and rectangular keys comes out.
 *
 * @param diameter of the shaft
 * @param width of the keyway
 */
public record Keyseat(Length diameter, Length width) {

    private static final Length CLEARANCE_PARALLEL = Length.of("0.005", Unit.INCH);
    private static final Length CLEARANCE_TAPER = Length.of("0.020", Unit.INCH);

    /** @throws IllegalArgumentException unless 0 &lt; width &lt; diameter */
    public Keyseat {
        if (width.signum() <= 0 || !width.isBelow(diameter)) {
            throw new Refused("model.keyseat.too-wide", width, diameter);
        }
    }

    /** From the crest of the shaft down to the edges of the keyway: the Y of the standard. */
    public Length crest() {
        double d = Nanometres.of(diameter);
        double w = Nanometres.of(width);
        return Nanometres.round(w * w / (2 * (d + Math.sqrt((d - w) * (d + w)))));
    }

    /**
     * From the far side of the shaft to the floor, for a key of {@code height}: the S of the standard.
     *
     * @throws IllegalArgumentException if so high a key leaves nothing of the shaft
     */
    public Length farSide(Length height) {
        Length s = diameter.minus(crest()).minus(half(height));
        if (s.signum() <= 0) {
            throw new Refused("model.keyseat.too-high", height, diameter);
        }
        return Nanometres.round(s);
    }

    /** From the far side of the bore to the roof of the keyway of a hub, for a parallel key of {@code height}. */
    public Length hubParallel(Length height) {
        return Nanometres.round(diameter.minus(crest()).plus(half(height)).plus(CLEARANCE_PARALLEL));
    }

    /** The same at its deep end for a taper key. */
    public Length hubTaper(Length height) {
        return Nanometres.round(diameter.minus(crest()).plus(half(height)).minus(CLEARANCE_TAPER));
    }

    private static Length half(Length height) {
        if (height.signum() <= 0) {
            throw new Refused("model.keyseat.no-key", height);
        }
        return height.half();
    }
}
