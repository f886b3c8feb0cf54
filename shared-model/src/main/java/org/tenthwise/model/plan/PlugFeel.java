package org.tenthwise.model.plan;

import org.tenthwise.model.words.Word;

/** What the hand must find when a plug is offered to its bore. */
public enum PlugFeel {
    FREELY(Answer.FREELY),
    WITH_DRAG(Answer.WITH_DRAG),
    NOT_AT_ALL(Answer.NOT_AT_ALL);

    private final Answer answer;

    PlugFeel(Answer answer) {
        this.answer = answer;
    }

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }

    public Answer answer() {
        return answer;
    }
}
