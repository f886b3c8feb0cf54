package org.tenthwise.model.compute.radius;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The radius of an arc that two equal rolls touch.
 *
 * <p>With rolls of diameter d and L over them. Convex, standing on a plate between the rolls: R = (L − d)² / (8 d),
 * dR/dL = (L − d) / (4 d). Concave, with the rolls lying in the arc and its bottom lower than the underside of the
 * rolls by H: R = (L − d)² / (8 H) + H / 2 + d / 2, dR/dH = 1/2 − (L − d)² / (8 H²).
 *
 * <p>Lengths, to 1 nm. Rolls by their measured diameter; they touch where the line between the centres meets the arc.
 *
 * <p>Rolls that touch each other leave no shorter L than 2 d. In a concave arc rolls lie below its middle: H is not
 * more than half of L − d.
 *
 * <p>Source: geometry of circles that touch.
 */
public final class ArcOverRolls {

    private ArcOverRolls() {}

    /** @throws IllegalArgumentException if the reading is less than two rolls */
    public static Arc convex(Length rolls, Length over) {
        double d = Nanometres.of(rolls);
        double apart = apart(rolls, over);
        double r = apart * apart / (8 * d);
        double half = Math.atan2(apart / 2, r - d / 2);
        return Arc.of(r, r * (1 - Math.cos(half)), 2 * half, apart / (4 * d));
    }

    /**
     * @param drop from the underside of the rolls down to the bottom of the arc
     * @throws IllegalArgumentException if the reading is less than two rolls, or the rolls could not lie so high
     */
    public static Arc concave(Length rolls, Length over, Length drop) {
        double apart = apart(rolls, over);
        if (drop.signum() <= 0) {
            throw new Refused("model.arc.not-positive", drop);
        }
        if (drop.isAbove(over.minus(rolls).half())) {
            throw new Refused(
                    "model.arc.rolls-too-high", drop, over.minus(rolls).half());
        }
        double h = Nanometres.of(drop);
        double r = apart * apart / (8 * h) + h / 2 + Nanometres.of(rolls) / 2;
        double sine = Math.min(1, apart / 2 / (r - Nanometres.of(rolls) / 2));
        return Arc.of(r, h, 2 * Math.asin(sine), 0.5 - apart * apart / (8 * h * h));
    }

    /** What is read over rolls of that diameter beside a convex arc of that radius. */
    public static Length over(Length rolls, Length radius) {
        double d = Nanometres.of(rolls);
        return Nanometres.round(d + Math.sqrt(8 * d * Nanometres.of(radius)));
    }

    private static double apart(Length rolls, Length over) {
        if (rolls.signum() <= 0) {
            throw new Refused("model.arc.not-positive", rolls);
        }
        if (over.isBelow(rolls.plus(rolls))) {
            throw new Refused("model.arc.less-than-two-rolls", over, rolls.plus(rolls));
        }
        return Nanometres.of(over.minus(rolls));
    }
}
