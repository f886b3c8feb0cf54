package org.tenthwise.model.plan;

import java.util.List;

/** A question answered by a tap, and the answers it takes. */
public enum Question {

    CONFIRMED(Answer.YES, Answer.NO),
    LOOKS_RIGHT(Answer.YES, Answer.NO),
    GO_ENTERS(Answer.YES, Answer.NO),
    NOT_GO_ENTERS(Answer.NO, Answer.YES),
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
        return this == GO_ENTERS || this == NOT_GO_ENTERS;
    }
}
