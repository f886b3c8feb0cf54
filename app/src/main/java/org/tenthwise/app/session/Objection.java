package org.tenthwise.app.session;

/**
 * Why something typed was not taken. Nothing is lost by it: what was typed is still with who typed it.
 *
 * @param kind   what is wrong
 * @param detail the figure or the words it is about; empty where the kind says it all
 */
public record Objection(Kind kind, String detail) {

    /** What can be wrong. */
    public enum Kind {
        NOT_A_NUMBER(false),
        NOT_ABOVE_NOUGHT(false),
        /** Plausible as typed only if it is really meant: entering it again takes it. */
        FAR_OFF(true),
        /** The sum cannot be done with it; the detail says why. */
        NO_SUM(false),
        /** The lowest of a turn lies above its highest. */
        WRONG_WAY_ROUND(false),
        NOTHING_ASKED(false),
        NOT_ASKED_HERE(false),
        BLANK(false),
        HELD(false),
        CLOSED(false),
        ALREADY_STRUCK(false),
        /** Nothing can be signed for what is not found out yet. */
        STILL_OPEN(false),
        /** What passed needs no concession. */
        PASSED(false);

        private final boolean insistent;

        Kind(boolean insistent) {
            this.insistent = insistent;
        }

        /** Whether entering the same again takes it all the same. */
        public boolean mayInsist() {
            return insistent;
        }
    }

    static Objection of(Kind kind) {
        return new Objection(kind, "");
    }
}
