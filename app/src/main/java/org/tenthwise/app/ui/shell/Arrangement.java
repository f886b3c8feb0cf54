package org.tenthwise.app.ui.shell;

/** The two ways a screen can be arranged. */
public enum Arrangement {

    /** At least 1280 × 800. */
    LANDSCAPE(1280, 800),
    /** At least 800 × 1280. */
    PORTRAIT(800, 1280);

    /** To the inch of a tablet of 1280 × 800 that is 8½ inches wide: 64 of them are about 11 mm. */
    private static final double DOTS = 150;

    /** No display has fewer: what tells so does not know. */
    private static final double LEAST_DOTS = 50;

    private final double width;
    private final double height;

    Arrangement(double width, double height) {
        this.width = width;
        this.height = height;
    }

    static Arrangement of(double width, double height) {
        return width >= height ? LANDSCAPE : PORTRAIT;
    }

    /**
     * What lengths are multiplied by so that the reference size fits a display of {@code width} by {@code height}, and
     * a key is no larger on it than on a ten-inch tablet, or smaller: a larger display shows more.
     *
     * @param dotsPerInch of the display; where that is not known, what fits
     */
    double scaleFor(double displayWidth, double displayHeight, double dotsPerInch) {
        double fits = Math.min(displayWidth / width, displayHeight / height);
        return dotsPerInch < LEAST_DOTS ? fits : Math.min(fits, Math.max(1, dotsPerInch / DOTS));
    }
}
