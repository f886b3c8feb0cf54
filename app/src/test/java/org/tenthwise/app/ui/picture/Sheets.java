package org.tenthwise.app.ui.picture;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

/** Draws pictures on a canvas without a window and saves them, to be looked at. */
public final class Sheets {

    private static final Path TO = Path.of("target", "screens", "pictures");

    private static final ScreenFaces FACES = new ScreenFaces();
    private static final TextMetrics LETTERING = new TextMetrics(Words.ENGLISH);

    /** Saves {@code name-day.png} or {@code name-night.png}. */
    public BufferedImage save(String name, Picture picture, Frame frame, Palette palette) {
        BufferedImage image = Toolkit.on(() -> draw(picture, frame, palette));
        Shots.save(image, TO.resolve(name + "-" + palette.name().toLowerCase(Locale.ROOT) + ".png"));
        return image;
    }

    private BufferedImage draw(Picture picture, Frame frame, Palette palette) {
        return image(
                frame.width(),
                frame.height(),
                palette,
                frame.ground(),
                canvas -> picture.draw(new Drawing(new CanvasPen(canvas, palette, FACES, 1), LETTERING, frame)));
    }

    /** What {@code ink} leaves on a ground; on the screen thread. */
    static BufferedImage image(
            double width, double height, Palette palette, Role ground, Consumer<GraphicsContext> ink) {
        Canvas canvas = new Canvas(width, height);
        canvas.getGraphicsContext2D().setFill(Color.web(palette.hex(ground)));
        canvas.getGraphicsContext2D().fillRect(0, 0, width, height);
        ink.accept(canvas.getGraphicsContext2D());
        return Shots.image(canvas.snapshot(null, null));
    }

    /** Pixels that differ from the one in the corner. */
    public static int inked(BufferedImage image) {
        int[] pixels = Shots.pixels(image);
        return (int) Arrays.stream(pixels).filter(pixel -> pixel != pixels[0]).count();
    }
}
