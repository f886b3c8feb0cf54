package org.tenthwise.app.ui.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import org.tenthwise.app.picture.Face;

/**
 * The lettering brought along, as the toolkit has it. Loading a face also makes it known to style sheets by its family.
 */
public final class ScreenFaces {

    private record Key(Face face, double size) {}

    private final Map<Key, Font> loaded = new HashMap<>();

    /** Makes every face known, so that style sheets can name them. */
    public void loadAll() {
        for (Face face : Face.values()) {
            of(face, 18);
        }
    }

    /** @param size pixels to the em */
    Font of(Face face, double size) {
        return loaded.computeIfAbsent(new Key(face, size), ScreenFaces::load);
    }

    private static Font load(Key key) {
        try (InputStream file = key.face().open()) {
            return Font.loadFont(file, key.size());
        } catch (IOException e) {
            throw new UncheckedIOException("The lettering brought along cannot be read: " + key.face(), e);
        }
    }
}
