package org.tenthwise.model.compute.fit;

/** The three kinds of fit of ISO 286-1. */
public enum FitKind {
    /** There is play, or at the tightest none and no squeeze either. */
    CLEARANCE,
    /** Some pairs have play, some are squeezed. */
    TRANSITION,
    /** The plug is squeezed, or at the loosest just fills the bore. */
    INTERFERENCE
}
