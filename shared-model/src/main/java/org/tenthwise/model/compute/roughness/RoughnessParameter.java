package org.tenthwise.model.compute.roughness;

/** What of a roughness profile the drawing limits. */
public enum RoughnessParameter {
    /** Mean height of the profile off its mean line. */
    RA("Ra"),
    /** Mean of the heights from the lowest to the highest point of each sampling length. */
    RZ("Rz");

    private final String symbol;

    RoughnessParameter(String symbol) {
        this.symbol = symbol;
    }

    /** As the drawing writes it. */
    public String symbol() {
        return symbol;
    }
}
