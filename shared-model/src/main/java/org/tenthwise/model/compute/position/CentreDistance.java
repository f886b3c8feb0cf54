package org.tenthwise.model.compute.position;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The distance of the middles of two bores or pins, from what a caliper reads over them, between them, or across the
 * web.
 *
 * <p>Over both: over − (d1 + d2) / 2. Between them, and across the web from edge to edge: between + (d1 + d2) / 2.
 *
 * <p>A length, exact. With plugs in the bores the diameters are those of the plugs, with edges those of the bores.
 *
 * <p>Two that touch are (d1 + d2) / 2 apart; nearer there is no room for both, and that is refused.
 *
 * <p>Source: common practice; geometry of a line through both middles.
 */
public final class CentreDistance {

    private CentreDistance() {}

    /**
     * @param over from outside to outside
     * @throws IllegalArgumentException if both would lie in one another
     */
    public static Length over(Length over, Length first, Length second) {
        if (over.isBelow(first.plus(second))) {
            throw new Refused("model.centre-distance.no-room");
        }
        return over.minus(first.plus(second).half());
    }

    /**
     * @param between from inside to inside
     * @throws IllegalArgumentException for less than nothing between them
     */
    public static Length between(Length between, Length first, Length second) {
        if (between.signum() < 0) {
            throw new Refused("model.centre-distance.nothing-between");
        }
        return between.plus(first.plus(second).half());
    }
}
