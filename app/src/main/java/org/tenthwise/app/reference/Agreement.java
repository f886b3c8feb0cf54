package org.tenthwise.app.reference;

/** How a figure worked out stands to the one published. */
public enum Agreement {

    /** To the last digit printed, or within what the source itself allows. */
    AGREES,
    /** It differs, and the reason is known. */
    ASIDE,
    DISAGREES
}
