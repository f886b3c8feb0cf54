package org.tenthwise.model.words;

/** Something a person asked for or gave cannot be taken; the message says why, and what would be right. */
public final class Refused extends IllegalArgumentException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    public Refused(Message why) {
        this.why = why;
    }

    /** For the text of {@code key}, its gaps filled in order. */
    public Refused(String key, Object... values) {
        this(Message.of(key, values));
    }

    public Refused(Message why, Throwable cause) {
        super(cause);
        this.why = why;
    }

    @Override
    public Message why() {
        return why;
    }

    /** In English; whoever shows it to a person lets {@link Words} say {@link #why()}. */
    @Override
    public String getMessage() {
        return why.toString();
    }
}
