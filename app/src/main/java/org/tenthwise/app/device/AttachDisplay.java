package org.tenthwise.app.device;

import com.gluonhq.attach.display.DisplayService;
import com.gluonhq.attach.util.Services;
import java.util.Optional;
import javafx.geometry.Dimension2D;

/**
 * As the device says. On a desk, and where the device says nothing, the client is a window of a ten-inch tablet's size,
 * or smaller where the display is.
 */
public final class AttachDisplay implements Display {

    /** What is left of a desk's display beside its bars; common practice. */
    private static final double USABLE = 0.9;

    @Override
    public Size window() {
        Optional<DisplayService> service = Services.get(DisplayService.class);
        if (service.isEmpty()) {
            return Size.TABLET;
        }
        Dimension2D all = service.get().getScreenResolution();
        if (all.getWidth() <= 0 || all.getHeight() <= 0) {
            return Size.TABLET;
        }
        return whole()
                ? new Size(all.getWidth(), all.getHeight())
                : new Size(
                        Math.min(Size.TABLET.width(), all.getWidth() * USABLE),
                        Math.min(Size.TABLET.height(), all.getHeight() * USABLE));
    }

    @Override
    public boolean whole() {
        return Services.get(DisplayService.class)
                .filter(service -> !service.isDesktop())
                .isPresent();
    }
}
