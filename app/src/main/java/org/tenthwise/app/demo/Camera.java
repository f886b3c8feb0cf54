package org.tenthwise.app.demo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Takes pictures of a scene, by day and by night, and numbers them in the order they are taken. */
final class Camera {

    private final Scene scene;
    private final BooleanProperty night;
    private final KeyPresser finger;
    private final Path folder;
    private final List<Path> taken = new ArrayList<>();
    private final Set<String> asked = new HashSet<>();

    /** @param folder is there */
    Camera(Scene scene, BooleanProperty night, KeyPresser finger, Path folder) {
        this.scene = scene;
        this.night = night;
        this.finger = finger;
        this.folder = folder;
    }

    void take(String name) throws IOException {
        String numbered = String.format(Locale.ROOT, "%02d-%s", taken.size() / 2 + 1, name);
        take(numbered + "-day.png", false);
        take(numbered + "-night.png", true);
        look(false);
    }

    /** The first time it is asked for by that name. */
    void once(String name) throws IOException {
        if (asked.add(name)) {
            finger.rest();
            take(name);
        }
    }

    /** Of the screen behind a key, and back. */
    void aside(String key, String name) throws IOException {
        finger.press(key);
        take(name);
        finger.press("back");
    }

    List<Path> taken() {
        return List.copyOf(taken);
    }

    private void take(String name, boolean dark) throws IOException {
        look(dark);
        BufferedImage image = finger.onScreen(() -> drawn(scene.snapshot(null)));
        Path file = folder.resolve(name);
        Files.deleteIfExists(file);
        if (!ImageIO.write(image, "png", file.toFile())) {
            throw new IOException("This Java cannot write pictures as PNG");
        }
        taken.add(file);
    }

    private void look(boolean dark) {
        finger.onScreen(() -> {
            night.set(dark);
            return true;
        });
        finger.rest();
    }

    private static BufferedImage drawn(WritableImage seen) {
        int width = (int) seen.getWidth();
        int height = (int) seen.getHeight();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        seen.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        return image;
    }
}
