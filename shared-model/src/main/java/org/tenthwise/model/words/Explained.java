package org.tenthwise.model.words;

/** An exception whose reason is for a person. */
public interface Explained {

    /** What happened, what is safe and what to do next; {@link Words} says it. */
    Message why();
}
