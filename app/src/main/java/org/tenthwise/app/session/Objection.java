package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/**
 * Why something typed was not taken. Nothing is lost by it: what was typed is still with who typed it.
 *
 * @param kind what is wrong
 * @param detail the figure or the words it is about; empty where the kind says it all
 * @param expected for a figure that is far off, about what was expected; empty for anything else
 * @param noSum why the sum cannot be done with it, where that is what is wrong
 */
public record Objection(Kind kind, String detail, String expected, Optional<Message> noSum) {

    /** What can be wrong. */
    public enum Kind {
        NOT_A_NUMBER,
        NOT_ABOVE_ZERO,
        /** No size of zero or less was ever cut: what the gauge is set on makes that of the reading. */
        NO_SUCH_SIZE,
        /** No such gauge, unit or feature gives it; {@link RunSession#keep} takes it where it is really meant. */
        FAR_OFF,
        /** Read when a check was full already, and not plainly the first reading of the next. */
        OPENS_NEXT,
        /** The sum cannot be done with it. */
        NO_SUM,
        /** The lowest of a turn or of a sweep lies above its highest. */
        WRONG_WAY_ROUND,
        /** Highest and lowest of a sweep are the same; {@link RunSession#keep} takes it where it is really meant. */
        STOOD_STILL,
        /** Places or temperatures of a size are missing: no cut before they are taken, or someone signs for it. */
        PLACES_UNREAD,
        /** Places or temperatures of teeth are missing: no cut before they are taken, whoever signs. */
        TEETH_UNREAD,
        NOTHING_ASKED,
        NOT_ASKED_HERE,
        BLANK,
        HELD,
        /** The run does not ask the step, by what it was begun for. */
        NOT_IN_THIS_RUN,
        CLOSED,
        /** The run was put away: it is taken up again first. */
        PUT_AWAY,
        /** What was scrapped is no mistake to be put away: the run is closed. */
        SCRAPPED,
        /** The run holds entries of a newer release, so nothing is added to it here. */
        NEWER,
        ALREADY_STRUCK,
        /** Nothing can be signed for what is not found out yet. */
        STILL_OPEN,
        /** What passed needs no concession. */
        PASSED,
        /** Who signs for a second measuring took part in the first. */
        NOT_A_SECOND_PERSON,
        /** What does not conform or is not complete cannot be accepted. */
        NOT_TO_BE_ACCEPTED,
        /** A characteristic cannot be carried on with; what is not of the drawing can only be that, or be put right. */
        NOT_FOR_THIS_CLASS,
        /** A paper that says something is entered already: it is struck out first, with a reason. */
        DOCUMENT_THERE,
        /** The day on a paper is still to come. */
        DATED_AHEAD,
        /** Figures of a paper that nothing can be judged by: no limits, of another kind, too few or too many. */
        FIGURES_UNLIKE,
        /** A sign that nobody sees stands in a name; the detail says which. */
        HIDDEN_SIGN
    }

    Objection(Kind kind, String detail) {
        this(kind, detail, "");
    }

    Objection(Kind kind, String detail, String expected) {
        this(kind, detail, expected, Optional.empty());
    }

    /** The sum cannot be done, as {@code refusal} says. */
    static Objection noSum(RuntimeException refusal) {
        return new Objection(Kind.NO_SUM, "", "", Optional.of(Explained.why(refusal)));
    }

    static Objection of(Kind kind) {
        return new Objection(kind, "");
    }

    /** One where something is wrong, none where nothing is. */
    static Optional<Objection> where(boolean wrong, Kind kind) {
        return wrong ? Optional.of(of(kind)) : Optional.empty();
    }

    /** Whether it can be kept on purpose. */
    public boolean mayBeKept() {
        return kind == Kind.FAR_OFF || kind == Kind.STOOD_STILL;
    }

    /** What is left of an objection to a figure that may be taken on purpose. */
    static Optional<Objection> standing(Optional<Objection> objection, boolean onPurpose) {
        return objection.filter(raised -> !(onPurpose && raised.mayBeKept()));
    }
}
