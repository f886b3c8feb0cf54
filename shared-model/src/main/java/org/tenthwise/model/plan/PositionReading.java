package org.tenthwise.model.plan;

import org.tenthwise.model.quantity.Unit;

/** What is read of an axis from the datums, as a plan writes it. */
public enum PositionReading {
    /** Two lengths, along the directions of the drawing's frame. */
    X_AND_Y("X", "Y"),

    /**
     * How far from the datum axis, and in which direction: counter-clockwise from +X when +X points right and +Y up.
     */
    POLAR("R", "\u03c6");

    /** What a direction is read in, where it is not typed in degrees and minutes. */
    static final Unit OF_A_DIRECTION = Unit.DEGREE;

    private final String first;
    private final String second;

    PositionReading(String first, String second) {
        this.first = first;
        this.second = second;
    }

    /** The letter of what is read first. */
    public String first() {
        return first;
    }

    /** The letter of what is read behind it. */
    public String second() {
        return second;
    }
}
