package org.tenthwise.app.picture;

/**
 * The room a picture is laid out for.
 *
 * @param width pixels
 * @param height pixels
 * @param textScale 1 for the sizes of the screen, 1.5 for large text, less in print
 * @param lineScale 1 for the line weights of the screen, less in print and for small pictures
 * @param ground what lies under the picture
 */
public record Frame(double width, double height, double textScale, double lineScale, Role ground) {

    /** Brings 18 px down to 11 px (8¼ pt), the least the record uses. */
    private static final double PRINT_TEXT = 0.62;

    private static final double PRINT_LINES = 0.6;

    public static Frame screen(double width, double height, double textScale) {
        return new Frame(width, height, textScale, 1, Role.SHEET);
    }

    /** A small picture in a list on the screen. */
    public static Frame small(double width, double height, Role ground) {
        return new Frame(width, height, 1, 0.75, ground);
    }

    public static Frame print(double width, double height) {
        return new Frame(width, height, PRINT_TEXT, PRINT_LINES, Role.SHEET);
    }

    /** The same with letters of another size. */
    Frame lettered(double text) {
        return new Frame(width, height, text, lineScale, ground);
    }

    /** Another room for the same lines and letters. */
    Frame sized(double across, double down) {
        return new Frame(across, down, textScale, lineScale, ground);
    }

    public Box box() {
        return new Box(0, 0, width, height);
    }
}
