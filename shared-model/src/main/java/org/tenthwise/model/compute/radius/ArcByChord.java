package org.tenthwise.model.compute.radius;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The radius of an arc from a chord and the height over it, or the height from the radius.
 *
 * <p>R = c² / (8 h) + h / 2, the angle of the arc 4 · arctan(2 h / c), and dR/dh = 1/2 − c² / (8 h²). From the radius,
 * h = R − √(R² − c² / 4): the arc that is no more than half a turn.
 *
 * <p>Lengths, to 1 nm; the chord is between the points of contact themselves, so with feet that are balls of radius b
 * it is a radius larger by b (convex) or smaller by b (concave) that comes out.
 *
 * <p>A height of half the chord is half a turn, where the radius hardly hangs on the height; the shallower the arc, the
 * more: with a chord of 20 and a radius of 50, 0.01 of height is 0.48 of radius.
 *
 * <p>Source: geometry of the circle.
 */
public final class ArcByChord {

    private ArcByChord() {}

    /** @throws IllegalArgumentException if chord or height is not above zero */
    public static Arc ofHeight(Length chord, Length height) {
        double c = positive(chord);
        double h = positive(height);
        return arc(c, h, c * c / (8 * h) + h / 2);
    }

    /** @throws IllegalArgumentException if the radius is less than half the chord */
    public static Arc ofRadius(Length chord, Length radius) {
        double c = positive(chord);
        if (radius.isBelow(chord.half())) {
            throw new Refused("model.arc.chord-too-long", chord, radius);
        }
        double r = Nanometres.of(radius);
        double h = c * c / 4 / (r + Math.sqrt((r - c / 2) * (r + c / 2)));
        return arc(c, h, r);
    }

    private static Arc arc(double chord, double height, double radius) {
        return Arc.of(radius, height, 4 * Math.atan(2 * height / chord), 0.5 - chord * chord / (8 * height * height));
    }

    private static double positive(Length length) {
        if (length.signum() <= 0) {
            throw new Refused("model.arc.not-positive", length);
        }
        return Nanometres.of(length);
    }
}
