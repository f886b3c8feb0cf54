package org.tenthwise.model.compare;

/** What sort of change it is, the heaviest first. */
public enum ChangeKind {
    /** What the part must be: limits, unit, tolerance class, thread, guard band, how often. */
    REQUIREMENT(true),
    /** How it is found out: gauge, places, how readings become a size. */
    METHOD(true),
    /** How it is made: operation, route, what a cut aims at. */
    PROCESS(true),
    /** Another drawing or another revision of it, or other changes in force. */
    DRAWING(false),
    /** Where it stands on the drawing. */
    PLACE(false),
    /** How the drawing marks it. */
    DESIGNATOR(false),
    /** Words for whoever reads them. */
    WORDS(false),
    /** The same, written otherwise: 20.000 and 20.00. */
    AS_WRITTEN(false);

    private final boolean asksForACheck;

    ChangeKind(boolean asksForACheck) {
        this.asksForACheck = asksForACheck;
    }

    /** Whether what was found before such a change may not hold after it. */
    public boolean asksForACheck() {
        return asksForACheck;
    }

    /** Whether the two still mean the same. */
    public boolean leavesTheMeaning() {
        return this == WORDS || this == AS_WRITTEN;
    }
}
