package org.tenthwise.model.compute.thread.limits;

/** What the one who uses the limits should know. */
public enum LimitsRemark {

    /** The standard does not list the diameter with the pitch. */
    NOT_IN_SERIES(true),

    /** The standard has the class, but not for this thread. */
    CLASS_NOT_LISTED(true),

    /** The standard speaks of single-start threads; the limits are those of one start, by the pitch. */
    AS_FOR_ONE_START(true),

    /** The tolerance of the pitch diameter is made larger for the number of starts, by a recalled factor. */
    WIDENED_FOR_STARTS(true),

    /** Tolerances hold for a length of engagement of one diameter. */
    ENGAGED_ONE_DIAMETER(false),

    /** Tolerances hold for a length of engagement of nine pitches. */
    ENGAGED_NINE_PITCHES(false),

    /** The greatest minor diameter is that of a rounded root, for reference. */
    MINOR_FOR_REFERENCE(false),

    /** The greatest minor diameter is that of a flat root, the least that of a rounded one. */
    MINOR_FLAT_AND_ROUNDED(false),

    /** Figures of the standard are recalled, and no printed limits were at hand to check them against. */
    RECALLED(false);

    private final boolean doubt;

    LimitsRemark(boolean doubt) {
        this.doubt = doubt;
    }

    /** Whether it makes the limits a proposal. */
    public boolean isDoubt() {
        return doubt;
    }
}
