package org.tenthwise.model.record;

/** What a record says of its part. */
public enum Outcome {
    /** Not closed yet. */
    UNFINISHED,
    /** Closed, and every characteristic passed. */
    RELEASED,
    /** Closed; what did not pass is used as it is, by concession. */
    RELEASED_WITH_CONCESSION,
    /** Closed with something that neither passed nor was conceded. */
    NOT_RELEASED,
    /** Closed, and scrapped. */
    SCRAPPED
}
