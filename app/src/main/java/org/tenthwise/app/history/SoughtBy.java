package org.tenthwise.app.history;

/** What readings, characteristics and parts are found by. */
public enum SoughtBy {
    PART_NUMBER,
    SERIAL,
    /** Of the material. */
    LOT,
    /** Who read or answered it. */
    PERSON,
    MACHINE,
    /** Mark of a gauge it was read or tried with. */
    GAUGE,
    /** That the characteristic has now. */
    VERDICT,
    /** What the run was begun for. */
    KIND,
    DESIGNATOR,
    /** Number on the drawing. */
    BALLOON,
    /** Number of the check, or its name. */
    CHARACTERISTIC,
    /** First day, as it was where it happened: 2026-11-25. */
    FROM,
    /** Last day, likewise. */
    TO
}
