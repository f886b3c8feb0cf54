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
        /**
         * How it is read by the plan, where a slip would be scrap: it stands in sight likewise, from before a reading.
         */
        BEFOREHAND,
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

    static Weighed beforehand(String sentence) {
        return new Weighed(Weight.BEFOREHAND, sentence);
    }

    static Weighed form(String sentence) {
        return new Weighed(Weight.FORM, sentence);
    }

    static Weighed how(String sentence) {
        return new Weighed(Weight.HOW, sentence);
    }

    boolean stays() {
        return weight == Weight.STAYS || weight == Weight.BEFOREHAND;
    }

    /** Whether the readings brought it, and whoever goes on must have read it. */
    boolean isToBeRead() {
        return weight == Weight.STAYS || weight == Weight.NEARER;
    }
}
