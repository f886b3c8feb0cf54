package org.tenthwise.app.ui.picture;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Lettering;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;

/** Shows one picture as large as the region is. Drawn anew when the picture, the size, the theme or the text size changes. */
public final class PictureView extends Region {

    private final Canvas canvas = new Canvas();
    private final ScreenFaces faces;
    private final Lettering lettering;

    private Optional<Picture> picture = Optional.empty();
    private Palette palette = Palette.DAY;
    private double textScale = 1;
    private double lineScale = 1;
    private Role ground = Role.SHEET;

    public PictureView(ScreenFaces faces, Lettering lettering) {
        this.faces = faces;
        this.lettering = lettering;
        getChildren().add(canvas);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    public void show(Picture next) {
        picture = Optional.of(next);
        setAccessibleText(next.spoken());
        setNeedsLayout(true);
    }

    public void clear() {
        picture = Optional.empty();
        setAccessibleText("");
        setNeedsLayout(true);
    }

    /** @param scale 1 for text at 100 % */
    public void look(Palette colours, double scale) {
        palette = colours;
        textScale = scale;
        setNeedsLayout(true);
    }

    /** For a small picture in a list: thinner lines, on another ground. */
    public void lookSmall(double lines, Role under) {
        lineScale = lines;
        ground = under;
        setNeedsLayout(true);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        canvas.setWidth(width);
        canvas.setHeight(height);
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        if (width > 0 && height > 0) {
            CanvasPen pen = new CanvasPen(canvas.getGraphicsContext2D(), palette, faces, pixelsPerUnit());
            picture.ifPresent(shown -> shown.draw(
                    new Drawing(pen, lettering, new Frame(width, height, textScale, lineScale, ground))));
        }
    }

    private double pixelsPerUnit() {
        return getScene() == null || getScene().getWindow() == null ? 1 : getScene().getWindow().getRenderScaleX();
    }
}
