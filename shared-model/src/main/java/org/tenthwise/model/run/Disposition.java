package org.tenthwise.model.run;

/** What is to happen to a step that did not pass. */
public enum Disposition {
    /** Put right by other means, then measured again. */
    REWORK,
    /** Used as it is, by concession. */
    USE_AS_IS,
    SCRAP,
    /** Gone on with all the same; only for a step that is not of the drawing. */
    CARRY_ON
}
