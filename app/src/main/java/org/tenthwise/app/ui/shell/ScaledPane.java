package org.tenthwise.app.ui.shell;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Lays its one child out at the reference size, 1280 × 800 or 800 × 1280 or more one way, and draws it as large as the
 * display allows: a key of 64 px is about 11 mm on any ten-inch tablet, whatever its pixels.
 */
final class ScaledPane extends Region {

    private final Region content;
    private final Scale scale = new Scale(1, 1, 0, 0);
    private final ReadOnlyObjectWrapper<Arrangement> arrangement = new ReadOnlyObjectWrapper<>(Arrangement.LANDSCAPE);

    ScaledPane(Region content) {
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
        double by = now.scaleFor(getWidth(), getHeight());
        scale.setX(by);
        scale.setY(by);
        arrangement.set(now);
        content.resizeRelocate(0, 0, Math.floor(getWidth() / by), Math.floor(getHeight() / by));
    }
}
