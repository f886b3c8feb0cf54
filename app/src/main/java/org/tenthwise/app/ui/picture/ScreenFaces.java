package org.tenthwise.app.ui.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.text.Font;
import org.tenthwise.app.picture.Face;

/**
 * The lettering brought along, as the toolkit has it. Loading a face also makes it known to style sheets by its family.
 *
 * <p>The toolkit keeps a copy of every file it loads for as long as it runs, so each face is loaded once and its sizes
 * are asked for by name.
 */
public final class ScreenFaces {

    private record Key(Face face, double size) {}

    private static final Map<Face, String> NAMES = new ConcurrentHashMap<>();

    private final Map<Key, Font> faces = new HashMap<>();

    /** Makes every face known, so that style sheets can name them. */
    public void loadAll() {
        for (Face face : Face.values()) {
            of(face, 18);
        }
    }

    /** @param size pixels to the em */
    Font of(Face face, double size) {
        return faces.computeIfAbsent(
                new Key(face, size), key -> new Font(NAMES.computeIfAbsent(face, ScreenFaces::load), size));
    }

    private static String load(Face face) {
        try (InputStream file = face.open()) {
            return Font.loadFont(file, -1).getName();
        } catch (IOException e) {
            throw new UncheckedIOException("The lettering brought along cannot be read: " + face, e);
        }
    }
}
