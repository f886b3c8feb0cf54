package org.tenthwise.app.ui.shell;

import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;

/**
 * The part of a screen that stands left of the rest where the display is wide, and above it where it is high.
 *
 * @param width where it stands on the left
 * @param height where it stands above
 */
public record SidePart(Region part, double width, double height) {

    /** Puts the part in its place in {@code body}, with a line towards the rest. */
    public void place(BorderPane body, Arrangement arrangement) {
        boolean wide = arrangement == Arrangement.LANDSCAPE;
        part.getStyleClass().removeAll("lined-right", "lined-below");
        part.getStyleClass().add(wide ? "lined-right" : "lined-below");
        part.setMinWidth(wide ? width : 0);
        part.setPrefWidth(width);
        part.setMaxWidth(wide ? width : Double.MAX_VALUE);
        part.setMinHeight(0);
        part.setPrefHeight(wide ? Region.USE_COMPUTED_SIZE : height);
        part.setMaxHeight(wide ? Double.MAX_VALUE : height);
        body.setLeft(wide ? part : null);
        body.setTop(wide ? null : part);
    }
}
