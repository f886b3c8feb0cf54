package org.tenthwise.model.record;

/** What the characteristics of a part come to. Who signed for it stands beside it and does not change it. */
public enum Outcome {
    /** Every characteristic passed, none of them after a repair. */
    CONFORMS,
    /** What did not pass is used as it is, by concession; or something passed after a repair. */
    CONFORMS_WITH_CONCESSIONS,
    /**
     * What is in this run passed or is used as it is; the plan has more, of which this run says nothing. Never said
     * without what kind of run it is.
     */
    ASKED_CONFORMS,
    /** Scrapped, or out with no concession; once the run is closed, also what could still have been cut. */
    DOES_NOT_CONFORM,
    /** Neither: something is still open, unproven, to be cut again, or a set-up is not settled. */
    NOT_COMPLETE,
    /** Neither, whatever was read: the run was begun by mistake or leads nowhere. */
    PUT_AWAY
}
