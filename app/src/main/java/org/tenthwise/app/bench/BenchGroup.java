package org.tenthwise.app.bench;

/** What a machinist looks for when he goes to the bench, in the order of a job. */
public enum BenchGroup {
    SIZE,
    THREAD,
    ANGLE,
    HOLES,
    SHAPE,
    SURFACE,
    CUT
}
