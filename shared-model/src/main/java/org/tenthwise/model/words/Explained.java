package org.tenthwise.model.words;

/** An exception whose reason is for a person. */
public interface Explained {

    /** What happened, what is safe and what to do next; {@link Words} says it. */
    Message why();

    /** Why {@code e} was thrown: its message, or its own text where it has none. */
    static Message why(Exception e) {
        return e instanceof Explained explained
                ? explained.why()
                : Message.of("as-said", String.valueOf(e.getMessage()));
    }
}
