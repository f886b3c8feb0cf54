package org.tenthwise.app.ui.shell;

import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;

/** A screen with a part that stands left of the rest where the display is wide, and above it where it is high. */
public abstract class SidedScreen extends Screen {

    private final BorderPane body = new BorderPane();
    private Region side;
    private double width;
    private double height;
    private boolean wide = true;

    protected SidedScreen(String title) {
        super(title);
    }

    /**
     * Called once, before the screen is shown.
     *
     * @param width of the part where it stands on the left
     * @param height of it where it stands above
     */
    protected final void lay(Region heading, Region part, double width, double height) {
        this.side = part;
        this.width = width;
        this.height = height;
        setTop(heading);
        setCenter(body);
    }

    protected final void rest(Region rest) {
        body.setCenter(rest);
    }

    /** Whether the part stands on the left. */
    protected final boolean isWide() {
        return wide;
    }

    @Override
    public final void arrange(Arrangement arrangement) {
        wide = arrangement == Arrangement.LANDSCAPE;
        side.getStyleClass().removeAll("lined-right", "lined-below");
        side.getStyleClass().add(wide ? "lined-right" : "lined-below");
        side.setMinWidth(wide ? width : 0);
        side.setPrefWidth(width);
        side.setMaxWidth(wide ? width : Double.MAX_VALUE);
        side.setMinHeight(0);
        side.setPrefHeight(wide ? Region.USE_COMPUTED_SIZE : height);
        side.setMaxHeight(wide ? Double.MAX_VALUE : height);
        body.setLeft(wide ? side : null);
        body.setTop(wide ? null : side);
        arranged();
    }

    /** What else hangs on how the screen is arranged. */
    protected void arranged() {}
}
