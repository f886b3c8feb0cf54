package org.tenthwise.app.series;

/** Which size of a part stands in a series. */
public enum SizeOf {
    /** As it was cut: of the first pass since metal last came off, whatever was measured again. */
    AS_CUT,
    /** As it was left. */
    FINAL
}
