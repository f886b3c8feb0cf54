package org.tenthwise.app.ui.shell;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Lays its one child out at the reference size, 1280 × 800 or 800 × 1280 or more, and draws it so that a key of 64 px
 * is about 11 mm, on any ten-inch tablet, whatever its pixels, and on a larger display too, which shows more.
 */
final class ScaledPane extends Region {

    private final Region content;
    private final double dotsPerInch;
    private final Scale scale = new Scale(1, 1, 0, 0);
    private final ReadOnlyObjectWrapper<Arrangement> arrangement = new ReadOnlyObjectWrapper<>(Arrangement.LANDSCAPE);

    /** @param dotsPerInch of the display; 0 where that is not known */
    ScaledPane(Region content, double dotsPerInch) {
        this.dotsPerInch = dotsPerInch;
        this.content = content;
        content.setManaged(false);
        content.getTransforms().add(scale);
        getChildren().add(content);
        widthProperty().subscribe(this::fit);
        heightProperty().subscribe(this::fit);
    }

    ReadOnlyObjectProperty<Arrangement> arrangementProperty() {
        return arrangement.getReadOnlyProperty();
    }

    private void fit() {
        if (getWidth() <= 0 || getHeight() <= 0) {
            return;
        }
        Arrangement now = Arrangement.of(getWidth(), getHeight());
        double by = now.scaleFor(getWidth(), getHeight(), dotsPerInch);
        scale.setX(by);
        scale.setY(by);
        arrangement.set(now);
        content.resizeRelocate(0, 0, Math.floor(getWidth() / by), Math.floor(getHeight() / by));
    }
}
