package org.tenthwise.app.command;

/** What a command says to the one that started it. */
public final class Exit {

    /** Done, and all is well. */
    public static final int WELL = 0;
    /** Done, and something is not as it should be: a check did not pass, a plan has a problem, a chain is broken. */
    public static final int NOT_WELL = 1;
    /** Not done. */
    public static final int COULD_NOT = 2;

    private Exit() {}
}
