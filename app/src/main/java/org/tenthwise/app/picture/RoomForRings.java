package org.tenthwise.app.picture;

/**
 * How large the rings of a run-out come out in a room, by rule of thumb: quick enough to choose between two rooms while
 * a screen is laid out. Lengths are in pixels of the sheet.
 */
public final class RoomForRings {

    /** The name of a section over its ring, where there are two. */
    private static final double NAME = 26;
    /** What the figures at the jaws need beside the ring. */
    private static final double FIGURES = 50;
    /** A ring and its jaws: where they are smaller than that, the figures have no room at the jaws. */
    private static final double LEAST_WITH_FIGURES = 190;
    /** What figures at the jaws are worth: a ring so much larger without them tells no more. */
    private static final double WORTH_OF_FIGURES = 1.25;
    /** What the figures take in lines over a ring, and in a column beside it. */
    private static final double LINES = 120;

    private static final double COLUMN = 160;

    private RoomForRings() {}

    /**
     * Of rings side by side or one over the other, whichever are larger.
     *
     * @param sections one or two
     * @return to be compared; the side of the square of each ring with its jaws, times what figures at them are worth
     */
    public static double worth(double width, double height, int sections) {
        double name = sections > 1 ? NAME : 0;
        return Math.max(of(width / sections, height - name), of(width, height / sections - name));
    }

    private static double of(double width, double height) {
        double withFigures = Math.min(width - FIGURES, height);
        return withFigures >= LEAST_WITH_FIGURES
                ? WORTH_OF_FIGURES * withFigures
                : Math.max(Math.min(width, height - LINES), Math.min(width - COLUMN, height));
    }
}
