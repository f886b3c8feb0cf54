package org.tenthwise.app.ui.picture;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;

/**
 * Shows one picture as large as the region is. Drawn anew when the picture, the size, the theme or the text size
 * changes.
 */
public final class PictureView extends Region {

    private final Canvas canvas = new Canvas();
    private final Scale toUnits = new Scale(1, 1, 0, 0);
    private final ScreenFaces faces;
    private final TextMetrics lettering;

    private Optional<Picture> picture = Optional.empty();
    private Palette palette = Palette.DAY;
    private double textScale = 1;
    private double lineScale = 1;
    private Role ground = Role.SHEET;

    /** What is done at a spot of the picture. */
    @FunctionalInterface
    public interface Tapped {

        /** @param frame the picture is laid out for now */
        void at(Frame frame, Point spot);
    }

    public PictureView(ScreenFaces faces, TextMetrics lettering) {
        this.faces = faces;
        this.lettering = lettering;
        getChildren().add(canvas);
        canvas.getTransforms().add(toUnits);
        localToSceneTransformProperty().addListener((property, was, is) -> {
            if (was.getMxx() != is.getMxx()) {
                setNeedsLayout(true);
            }
        });
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    public void show(Picture next) {
        picture = Optional.of(next);
        setAccessibleText(next.spoken());
        redraw();
    }

    public void clear() {
        picture = Optional.empty();
        setAccessibleText("");
        redraw();
    }

    /** The second of two taps at one spot is none. */
    public void onTap(Tapped tapped) {
        setOnMouseClicked(event -> {
            if (picture.isPresent() && event.getClickCount() == 1) {
                tapped.at(frame(), new Point(event.getX(), event.getY()));
            }
        });
    }

    private Frame frame() {
        return new Frame(getWidth(), getHeight(), textScale, lineScale, ground);
    }

    /** @param scale 1 for text at 100 % */
    public void look(Palette colours, double scale) {
        palette = colours;
        textScale = scale;
        redraw();
    }

    /** For a small picture in a list: thinner lines, on another ground. */
    public void lookSmall(double lines, Role under) {
        lineScale = lines;
        ground = under;
        redraw();
    }

    @Override
    protected void layoutChildren() {
        draw();
    }

    /** At once where there is room already: a request for layout made while a list lays out its rows can be lost. */
    private void redraw() {
        if (getWidth() > 0 && getHeight() > 0) {
            draw();
        } else {
            setNeedsLayout(true);
        }
    }

    private void draw() {
        double width = getWidth();
        double height = getHeight();
        double device = pixelsPerUnit();
        canvas.setWidth(Math.ceil(width * device));
        canvas.setHeight(Math.ceil(height * device));
        toUnits.setX(1 / device);
        toUnits.setY(1 / device);
        GraphicsContext context = canvas.getGraphicsContext2D();
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        context.setTransform(device, 0, 0, device, 0, 0);
        if (width > 0 && height > 0) {
            CanvasPen pen = new CanvasPen(context, palette, faces, device);
            picture.ifPresent(shown -> shown.draw(new Drawing(pen, lettering, frame())));
        }
    }

    /**
     * Device pixels to one pixel of the sheet: what the display does, and what the screen is scaled by on the way to
     * it.
     */
    private double pixelsPerUnit() {
        double drawnAt = getLocalToSceneTransform().getMxx();
        return getScene() == null || getScene().getWindow() == null
                ? drawnAt
                : drawnAt * getScene().getWindow().getRenderScaleX();
    }
}
