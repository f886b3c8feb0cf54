package org.tenthwise.app.ui.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

class PictureViewTest {

    /** A square over the left half of its room, and a word. */
    private static final Picture HALF = new Picture() {
        @Override
        public void draw(Drawing drawing) {
            double right = drawing.frame().width() / 2;
            double bottom = drawing.frame().height();
            drawing.area(
                    List.of(new Point(0, 0), new Point(right, 0), new Point(right, bottom), new Point(0, bottom)),
                    Role.ACCENT);
            drawing.text(Label.of("30.021", 24, Role.INK), new Point(right + 10, bottom / 2), Anchor.LEFT);
        }

        @Override
        public String spoken() {
            return "Half a room";
        }
    };

    @Test
    void thePictureIsDrawnAtTheSizeOfTheViewInTheColoursOfTheTheme() {
        List<Integer> colours = Toolkit.on(() -> {
            PictureView view = new PictureView(new ScreenFaces(), new TextMetrics(Words.ENGLISH));
            Scene scene = new Scene(new StackPane(view), 200, 100);
            view.show(HALF);
            int day = colour(scene);
            view.look(Palette.NIGHT, 1);
            return List.of(day, colour(scene));
        });
        assertEquals(List.of(Palette.DAY.rgb(Role.ACCENT), Palette.NIGHT.rgb(Role.ACCENT)), colours);
    }

    @Test
    void whatThePictureShowsIsSaid() {
        assertEquals("Half a room", Toolkit.on(() -> {
            PictureView view = new PictureView(new ScreenFaces(), new TextMetrics(Words.ENGLISH));
            view.show(HALF);
            return view.getAccessibleText();
        }));
    }

    @Test
    void aClearedViewShowsNothing() {
        int colour = Toolkit.on(() -> {
            PictureView view = new PictureView(new ScreenFaces(), new TextMetrics(Words.ENGLISH));
            Scene scene = new Scene(new StackPane(view), 200, 100);
            view.show(HALF);
            colour(scene);
            view.clear();
            return colour(scene);
        });
        assertNotEquals(Palette.DAY.rgb(Role.ACCENT), colour);
    }

    /** At a spot in the left half, just inside its right edge. */
    private static int colour(Scene scene) {
        WritableImage shot = scene.snapshot(null);
        return shot.getPixelReader().getArgb(95, 50) & 0xffffff;
    }
}
