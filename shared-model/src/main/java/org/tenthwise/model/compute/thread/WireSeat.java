package org.tenthwise.model.compute.thread;

/** Where a wire comes to lie in a thread whose crest is known, and whether it stands out over that crest. */
public enum WireSeat {

    /** On both flanks, above the crest: the measurement means something. */
    ON_THE_FLANKS,

    /** On both flanks, but flush with the crest or lower: an anvil may rest on the crests. */
    BELOW_THE_CREST,

    /** Nowhere on the flanks: the crests end before the wire reaches them. */
    ON_THE_CRESTS
}
