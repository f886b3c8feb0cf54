package org.tenthwise.model.compute.roundness;

import org.tenthwise.model.quantity.Length;

/** One move of the hand, to true up work. */
public sealed interface Move {

    /**
     * Of four jaws that move each by itself: one is loosened, then the one opposite tightened until the needle held
     * over it has fallen.
     *
     * @param fall more than zero: how far the work goes, and so what the needle over the jaw shows; over a full turn it
     *     is twice that
     */
    record Jaw(int loosen, int tighten, Length fall) implements Move {}

    /** Of three jaws that move together: packed, by a shim of this thickness. */
    record Shim(int under, Length thickness) implements Move {}

    /** The high side is tapped with a soft mallet until the needle over it has fallen by the amount. */
    record Tap(Eccentricity from) implements Move {}

    /**
     * The work is moved away from its high side, however it is held, until the needle over that side has fallen by the
     * amount.
     */
    record Away(Eccentricity from) implements Move {}

    /** The face of the work is packed on the side to which the work leans, to stand it up. */
    record Pack(Eccentricity lean) implements Move {}

    /** What needs no figure. */
    enum Plain implements Move {
        /** Open, wipe jaws and work, clamp again. */
        CLEAN_JAWS,
        /** Clamp the work again turned in the jaws. */
        TURN_IN_JAWS,
        /** Bore the soft jaws to the work. */
        BORE_SOFT_JAWS,
        /** Wipe collet, its seat and the work. */
        CLEAN_COLLET,
        TURN_IN_COLLET,
        /** Another collet, of the size of the work. */
        OTHER_COLLET,
        /** Wipe centres and centre holes. */
        CLEAN_CENTRES,
        /**
         * Half a turn against the driver: what goes with the work is in its centre holes, what stays is in the centre.
         */
        TURN_AGAINST_DRIVER,
        /** True the centre, or dress the centre holes, as that has shown. */
        DRESS_CENTRES,
        /** A little, one at a time, the work held up. */
        EASE_CLAMPS,
        TIGHTEN_CLAMPS,
        /** Wipe face plate and work. */
        CLEAN_FACES,
        /** A little, one at a time, the work held up. */
        EASE_PADS,
        /** Until they just touch, without the needle moving. */
        PADS_BACK
    }
}
