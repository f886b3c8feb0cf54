package org.tenthwise.app.ui.theme;

import javafx.scene.shape.SVGPath;

/**
 * The drawn signs on keys, each in a box of 48 × 36 px, as lines. A sign stands beside a word, or its key has a spoken
 * name.
 */
public enum Icon {
    BACK("M 30 6 L 18 18 L 30 30"),
    EARLIER("M 8 26 L 24 11 L 40 26"),
    LATER("M 8 11 L 24 26 L 40 11"),
    TAKE_BACK("M 14 3 L 46 3 L 46 33 L 14 33 L 1 18 Z M 25 12 L 37 24 M 37 12 L 25 24"),
    SHIFT("M 24 4 L 38 18 L 31 18 L 31 31 L 17 31 L 17 18 L 10 18 Z");

    private final String path;

    Icon(String path) {
        this.path = path;
    }

    /** A new drawing of the sign, coloured by the theme. */
    public SVGPath drawn() {
        SVGPath drawn = new SVGPath();
        drawn.setContent(path);
        drawn.getStyleClass().add("icon");
        drawn.setMouseTransparent(true);
        return drawn;
    }
}
