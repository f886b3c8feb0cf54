package org.tenthwise.model.words;

/** Something with a name of its own for each reader: in a text it is called as {@link Words#naming} has it. */
public interface Keyed {

    /** What files and other programs call it. */
    String key();
}
