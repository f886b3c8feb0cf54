package org.tenthwise.app.history;

/**
 * Something written in a run that is offered to be written again.
 *
 * @param of what it is offered for: the part number of a lot, the kind of a gauge; empty for people and machines
 * @param place which of the names of its kind in the run it is, from 0
 */
public record NameUse(Kind kind, String of, String name, int place) {

    /** What is named. */
    public enum Kind {
        PERSON,
        MACHINE,
        LOT,
        GAUGE
    }
}
