package org.tenthwise.app.ui.shell;

/** What is done about the step in hand, or about its run, by a form of its own. */
public enum Deed {
    /** Strike out a reading or an answer. */
    STRIKE,
    /** What becomes of a step that did not pass. */
    DISPOSE,
    /** Put the first reading of a turn to the place it was taken at. */
    STOOD_ELSEWHERE,
    /** Sign for a cut on what is read so far. */
    CUT_ON_THESE,
    /** Choose another gauge. */
    OTHER_GAUGE,
    /** How the register of the machine counts, and what is usually aimed at on it. */
    MACHINE,
    /** What a document says. */
    DOCUMENT,
    /** Put the run away. */
    PUT_AWAY
}
