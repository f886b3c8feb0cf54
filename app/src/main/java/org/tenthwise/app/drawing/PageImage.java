package org.tenthwise.app.drawing;

import java.awt.image.BufferedImage;

/** A page of a drawing as it is seen, on white. */
public final class PageImage {

    private final int page;
    private final int pages;
    private final BufferedImage image;

    /**
     * @param page from 1
     * @param pages how many the file has
     */
    PageImage(int page, int pages, BufferedImage image) {
        this.page = page;
        this.pages = pages;
        this.image = image;
    }

    public int page() {
        return page;
    }

    public int pages() {
        return pages;
    }

    /** Pixels across. */
    public int width() {
        return image.getWidth();
    }

    /** Pixels down. */
    public int height() {
        return image.getHeight();
    }

    /** Red, green and blue of every pixel in one figure each, line by line from the top, none of them see-through. */
    public int[] pixels() {
        return image.getRGB(0, 0, width(), height(), new int[width() * height()], 0, width());
    }
}
