package org.tenthwise.model.words;

/** A sum comes to nothing with the figures it was given; the message says why. */
public final class Unworkable extends ArithmeticException implements Explained {

    private static final long serialVersionUID = 1L;

    private final transient Message why;

    public Unworkable(String key, Object... values) {
        this.why = Message.of(key, values);
    }

    @Override
    public Message why() {
        return why;
    }

    @Override
    public String getMessage() {
        return why.toString();
    }
}
