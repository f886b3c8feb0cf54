package org.tenthwise.model.compute.thread.limits;

import org.tenthwise.model.words.Word;

/** What limits rest on. */
public enum LimitsBasis {

    /** Tolerances from the tables of the standard. */
    TABLE,

    /** Worked out by the formulas of the standard, for a thread it lists. */
    FORMULA,

    /** Worked out the same way for a thread the standard does not list: the drawing has the last word. */
    PROPOSAL;

    /** How it is written in answers and plans. */
    public String key() {
        return Word.of(this);
    }
}
