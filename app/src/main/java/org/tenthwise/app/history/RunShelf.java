package org.tenthwise.app.history;

/** Where a run lies. */
public enum RunShelf {
    /** Among those to go on with. */
    OPEN,
    CLOSED,
    PUT_AWAY
}
