package org.tenthwise.app.sums;

/** What a figure or a word of a sum is of; it says how a person reads it. */
public enum Quantity {
    LENGTH,
    /** Degrees. */
    ANGLE,
    /** Degrees Celsius. */
    TEMPERATURE,
    /** Millionths to the degree. */
    EXPANSION,
    /** Threads to the inch. */
    PER_INCH,
    COUNT,
    /** A figure of any unit, or of none. */
    FIGURE,
    WORD,
    /** Figures and words under keys of their own. */
    TABLE
}
