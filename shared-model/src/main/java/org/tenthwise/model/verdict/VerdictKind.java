package org.tenthwise.model.verdict;

/** The five words a check can end in. */
public enum VerdictKind {
    PASS,
    FAIL,
    /** Out, but on the side that can still be cut. */
    CUT_AGAIN,
    /** Inside a guard band, on either side of a limit: neither shown to be in nor to be out. */
    UNPROVEN,
    /** Readings or answers are missing. */
    OPEN
}
