package org.tenthwise.model.words;

/** Something that was asked for could not be done; why is for the person who asked. */
public abstract class ExplainedFailure extends Exception implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    protected ExplainedFailure(Message why) {
        this.why = why;
    }

    protected ExplainedFailure(Message why, Throwable cause) {
        super(cause);
        this.why = why;
    }

    @Override
    public final Message why() {
        return why;
    }

    /** In English; whoever shows it to a person lets {@link Words} say {@link #why()}. */
    @Override
    public final String getMessage() {
        return why.toString();
    }
}
