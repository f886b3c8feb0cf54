package org.tenthwise.app.picture;

/**
 * What draws a picture: on the screen, into the record, or into a list where a test looks at it.
 *
 * <p>Coordinates are pixels of the sheet, y downwards. Hatching, dimensions and signs are made of these three in
 * {@link Drawing}, so that every pen draws them alike.
 */
public interface Pen {

    void stroke(Shape shape, Stroke stroke, Role role);

    /** Fills a closed chain or a circle; a chain that crosses itself by the even-odd rule. */
    void fill(Shape shape, Role role);

    /**
     * Letters a text that needs one face only.
     *
     * @param start left end of the base line
     * @param size height of the em in pixels
     */
    void text(Face face, String text, Point start, double size, Role role);

    /** What a sign that is drawn says to whoever searches a page or copies its text; nothing where there is no text. */
    default void unseen(Face face, String text, Point start, double size) {}
}
