package org.tenthwise.model.plan;

/** How the readings of a check become the one size that is judged. */
public enum Combine {

    /** Every reading must be inside; the one nearest to a limit, or furthest out, decides. */
    EACH("each"),
    MEAN("mean"),
    LARGEST("largest"),
    SMALLEST("smallest"),
    /** Largest less smallest. */
    RANGE("range");

    private final String key;

    Combine(String key) {
        this.key = key;
    }

    /** How plan files name it. */
    public String key() {
        return key;
    }
}
