package org.tenthwise.model.compute.statistics;

import org.tenthwise.model.words.Refused;

/** A confidence, a cover or a level of significance: a share of one. */
final class Share {

    private static final double CLOSEST = 1e-9;

    private Share() {}

    /**
     * @throws IllegalArgumentException if {@code share} is not between 0 and 1, or so close to either that it asks for
     *     certainty
     */
    static double check(String name, double share) {
        if (!(share >= CLOSEST && share <= 1 - CLOSEST)) {
            throw new Refused("model.share.share-between", name, share);
        }
        return share;
    }
}
