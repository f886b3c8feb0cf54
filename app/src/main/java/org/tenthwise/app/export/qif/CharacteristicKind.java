package org.tenthwise.app.export.qif;

/**
 * A kind of characteristic of the standard: its name, and what it has of its own in each of its four aspects, behind
 * what all kinds have.
 */
interface CharacteristicKind {

    /** How the standard calls it; every one of its elements begins so: {@code Diameter}. */
    String name();

    /** Its limits. */
    void define(XmlElement definition);

    /** What the drawing wants it to be. */
    void want(XmlElement nominal);

    /** What was found. Nothing while something is still to come. */
    void measure(XmlElement measurement, ItemFound found);
}
