package org.tenthwise.model.tolerance;

/** At which size a position tolerance is stated: at any, with the most material, or with the least. */
public enum MaterialModifier {
    /** Regardless of feature size: no bonus. */
    NONE,
    /** Maximum material condition, the M in a circle: smallest hole, largest shaft. */
    MMC,
    /** Least material condition, the L in a circle: largest hole, smallest shaft. */
    LMC;

    /** Whether the size at which no bonus is left is the least one. */
    public boolean countsFromLeast(FeatureOfSize feature) {
        return (this == MMC) == (feature == FeatureOfSize.HOLE);
    }
}
