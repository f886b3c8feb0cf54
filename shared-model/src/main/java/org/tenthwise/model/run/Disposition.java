package org.tenthwise.model.run;

/**
 * What is to happen to a step that did not pass. The words are those of ISO 9000:2015, 3.12.8 (rework) and 3.12.9
 * (repair), from memory.
 */
public enum Disposition {
    /** Made to conform by more work, then measured again. */
    REWORK,
    /** Made fit for use though not to the drawing, by approval, then measured again. */
    REPAIR,
    /** Used as it is, by concession. */
    USE_AS_IS,
    SCRAP,
    /** Gone on with all the same; only for a step that is not of the drawing. */
    CARRY_ON;

    /** Whether the work is changed by it, so that nothing found before says anything of it any more. */
    public boolean changesTheWork() {
        return this == REWORK || this == REPAIR;
    }

    /** Whether someone with the right to depart from the drawing must have agreed, under a number. */
    public boolean departsFromTheDrawing() {
        return this == REPAIR || this == USE_AS_IS;
    }
}
