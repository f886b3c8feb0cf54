package org.tenthwise.app.bench;

/** The sums of the bench, in the order they are offered. */
public enum BenchKind {
    WIRES,
    NEXT_CUT,
    RUN_OUT,
    FIT,
    TEMPERATURE,
    DRILL_SET,
    THREAD_LIMITS,
    ZONE
}
