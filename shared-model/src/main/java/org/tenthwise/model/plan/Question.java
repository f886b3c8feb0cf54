package org.tenthwise.model.plan;

import java.util.List;

/** A question answered by a tap, and the answers it takes. */
public enum Question {
    CONFIRMED(Answer.YES, Answer.NO),
    LOOKS_RIGHT(Answer.YES, Answer.NO),
    GO_ENTERS(Answer.YES, Answer.NO),
    /** Asked until yes became the good answer at both ends; only older runs have it. */
    NOT_GO_ENTERS(Answer.NO, Answer.YES),
    /** Whether the not-go end does not do what it must not. */
    NOT_GO_STAYS_OUT(Answer.YES, Answer.NO),
    PLUG_FEELS(Answer.FREELY, Answer.WITH_DRAG, Answer.NOT_AT_ALL),
    /** How the gauge touched the grooves of a thread, at every reading of the pass. */
    GROOVES_TOUCHED(Answer.OPPOSITE_GROOVES, Answer.SQUARE_ACROSS);

    private final List<Answer> answers;

    Question(Answer... answers) {
        this.answers = List.of(answers);
    }

    /** The answers, the wanted one of a plain question first. */
    public List<Answer> answers() {
        return answers;
    }

    /** Whether the answer is about the readings of the pass, so that one read after it is not spoken for. */
    public boolean isOfReadings() {
        return this == GROOVES_TOUCHED;
    }

    /** Whether a limit gauge gives the answer, so that it stands and falls with that gauge. */
    public boolean byLimitGauge() {
        return this == GO_ENTERS || this == NOT_GO_ENTERS || this == NOT_GO_STAYS_OUT;
    }

    /** The question that is asked for it now. */
    public Question today() {
        return this == NOT_GO_ENTERS ? NOT_GO_STAYS_OUT : this;
    }

    /** What an answer to it says to the question that is asked now. */
    public Answer today(Answer given) {
        return this == NOT_GO_ENTERS ? given == Answer.NO ? Answer.YES : Answer.NO : given;
    }
}
