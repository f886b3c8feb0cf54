package org.tenthwise.model.plan;

/**
 * Where the balloon of a step is on the file of the drawing.
 *
 * @param page from 1
 * @param x from the left edge of the page, in thousandths of its width, 0 to {@value #WHOLE}
 * @param y from its upper edge, in thousandths of its height, 0 to {@value #WHOLE}
 */
public record PageSpot(int page, int x, int y) {

    /** Thousandths from one edge of a page to the other. */
    public static final int WHOLE = 1000;

    /** The most pages a file of a drawing is turned through. */
    public static final int MOST_PAGES = 200;

    /** @throws IllegalArgumentException outside of any page */
    public PageSpot {
        if (!isPage(page) || !isOnPage(x) || !isOnPage(y)) {
            throw new IllegalArgumentException("On no page: " + page + ", " + x + ", " + y);
        }
    }

    public static boolean isPage(int page) {
        return page >= 1 && page <= MOST_PAGES;
    }

    public static boolean isOnPage(int thousandths) {
        return thousandths >= 0 && thousandths <= WHOLE;
    }
}
