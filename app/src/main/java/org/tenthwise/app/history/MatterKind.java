package org.tenthwise.app.history;

/** What can be open in a run, or of a gauge. */
public enum MatterKind {
    /** A characteristic is out, and no document says what becomes of it. */
    NONCONFORMANCE,
    /** A characteristic is used though it is not as the drawing has it; it stays so. */
    CONCESSION,
    /** A concession that held until something it rests on was changed. */
    CONCESSION_LAPSED,
    /** A characteristic was made fit for use by a repair, though not as the drawing has it; it stays so. */
    REPAIR,
    /** A repair that was approved for a finding that is not there any more, and is not measured again. */
    REPAIR_LAPSED,
    /** Any other disposition that does not hold any more. */
    DISPOSITION_LAPSED,
    /** A run is open, or was closed with something not found out. */
    RUN_NOT_COMPLETE,
    /** A document that proves something is not there, or does not prove it. */
    DOCUMENT_TO_COME,
    /** What a gauge counts was found wrong, and nobody has told it since. */
    GAUGE_IN_DOUBT,
    /** What counts was read with a gauge, or under a setting on a master, past its due day. */
    GAUGE_PAST_DUE,
    /** A run is closed, and nobody accepted or refused it, or who did signed before something changed. */
    SIGNATURE_MISSING;

    /** Whether it is done where it is open, and by nothing that is signed elsewhere: a document is given in its run. */
    public boolean isDoneInItsRun() {
        return this == DOCUMENT_TO_COME;
    }
}
