package org.tenthwise.app.series;

/** What parts and characteristics are found by. */
public enum SoughtBy {
    PART_NUMBER,
    SERIAL,
    LOT,
    PERSON,
    MACHINE,
    GAUGE,
    VERDICT,
    /** What the run was begun for. */
    KIND,
    DESIGNATOR,
    /** Number on the drawing. */
    BALLOON,
    /** Number of the check, or its name. */
    CHARACTERISTIC,
    /** First day, as 2026-11-25. */
    FROM,
    /** Last day, likewise. */
    TO
}
