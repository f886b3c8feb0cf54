package org.tenthwise.app.ui.shell;

/** The two ways a screen can be arranged. */
public enum Arrangement {

    /** At least 1280 × 800. */
    LANDSCAPE(1280, 800),
    /** At least 800 × 1280. */
    PORTRAIT(800, 1280);

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
     * What lengths are multiplied by so that the reference size just fits a display of {@code width} by {@code height}.
     */
    double scaleFor(double displayWidth, double displayHeight) {
        return Math.min(displayWidth / width, displayHeight / height);
    }
}
