package org.tenthwise.app.drawing;

/**
 * What is seen of a page: all of it, or a part as wide and as high in proportion.
 *
 * @param left of it, as a share of the page's width
 * @param top of it, as a share of the page's height
 * @param share of the page's width and height that is seen, over 0 to 1
 */
public record PagePart(double left, double top, double share) {

    public static final PagePart WHOLE = new PagePart(0, 0, 1);

    /** So much of the page, with a spot in its middle as far as the edges of the page let it. */
    public static PagePart about(double x, double y, double share) {
        return new PagePart(within(x - share / 2, 1 - share), within(y - share / 2, 1 - share), share);
    }

    private static double within(double at, double most) {
        return Math.max(0, Math.min(most, at));
    }

    public boolean isWhole() {
        return share >= 1;
    }

    /** Whether a spot of the page is seen. */
    public boolean shows(double x, double y) {
        return across(x) >= 0 && across(x) <= 1 && down(y) >= 0 && down(y) <= 1;
    }

    /** Where a spot of the page is across what is seen: 0 at its left edge, 1 at its right. */
    public double across(double x) {
        return (x - left) / share;
    }

    public double down(double y) {
        return (y - top) / share;
    }

    /** The spot of the page at a spot of what is seen. */
    public double pageX(double across) {
        return left + across * share;
    }

    public double pageY(double down) {
        return top + down * share;
    }
}
