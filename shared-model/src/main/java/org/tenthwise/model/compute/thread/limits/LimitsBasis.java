package org.tenthwise.model.compute.thread.limits;

/** What limits rest on. */
public enum LimitsBasis {

    /** Tolerances from the tables of the standard. */
    TABLE("table"),

    /** Worked out by the formulas of the standard, for a thread it lists. */
    FORMULA("formula"),

    /** Worked out the same way for a thread the standard does not list: the drawing has the last word. */
    PROPOSAL("proposal");

    private final String key;

    LimitsBasis(String key) {
        this.key = key;
    }

    /** How it is written in answers and plans. */
    public String key() {
        return key;
    }
}
