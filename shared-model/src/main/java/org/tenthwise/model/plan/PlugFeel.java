package org.tenthwise.model.plan;

/** What the hand must find when a plug is offered to its bore. */
public enum PlugFeel {
    FREELY("freely", Answer.FREELY),
    WITH_DRAG("with-drag", Answer.WITH_DRAG),
    NOT_AT_ALL("not-at-all", Answer.NOT_AT_ALL);

    private final String key;
    private final Answer answer;

    PlugFeel(String key, Answer answer) {
        this.key = key;
        this.answer = answer;
    }

    /** How plan files name it. */
    public String key() {
        return key;
    }

    public Answer answer() {
        return answer;
    }
}
