package org.tenthwise.app.text;

/** A sentence about a step, and how much hangs on its being read. */
public record Weighed(Weight weight, String sentence) {

    /** The weightiest first. */
    public enum Weight {
        /**
         * Who misses it can scrap the part, or trust readings that are worth nothing: it stands in sight, in full,
         * whatever else there is to say.
         */
        STAYS,
        /** What the pass lacks to be proven. */
        NEARER,
        /** What the pass rests on. */
        PROOF,
        /** What warmth or the touch of the gauge was taken off for. */
        CORRECTED,
        /** Taper, out of round, off centre. */
        FORM,
        /** How the readings were put together, and what was done before. */
        HOW
    }

    static Weighed stays(String sentence) {
        return new Weighed(Weight.STAYS, sentence);
    }

    static Weighed form(String sentence) {
        return new Weighed(Weight.FORM, sentence);
    }

    static Weighed how(String sentence) {
        return new Weighed(Weight.HOW, sentence);
    }

    boolean stays() {
        return weight == Weight.STAYS;
    }

    /** Whether whoever goes on must have read it. */
    boolean isToBeRead() {
        return stays() || weight == Weight.NEARER;
    }
}
