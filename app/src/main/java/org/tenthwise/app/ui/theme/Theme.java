package org.tenthwise.app.ui.theme;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.ui.picture.ScreenFaces;

/**
 * Dresses a scene: fonts, the style sheet, and the look as pseudo-classes {@code night}, {@code large} and
 * {@code gloves} on its root.
 *
 * <p>Type classes, sizes at 100 %: {@code reading} 56 bold, {@code figure} 34, {@code title} 32 bold, {@code verdict}
 * 27, {@code heading} 26 bold, {@code strong} 24 bold, {@code next} 21 bold, {@code middling} 20, {@code body} 18; with
 * {@code bold}, {@code second} (second text) and {@code accent} beside them. A type class belongs on a leaf: sizes are
 * relative to the parent's.
 */
public final class Theme {

    private static final String SHEET = "tenthwise.css";

    private final Look look;

    public Theme(Look look, ScreenFaces faces) {
        this.look = look;
        faces.loadAll();
    }

    /** Dresses {@code scene} and keeps it dressed as the look changes. */
    public void dress(Scene scene) {
        scene.getStylesheets()
                .setAll(
                        colours(),
                        Objects.requireNonNull(Theme.class.getResource(SHEET), SHEET)
                                .toExternalForm());
        Parent root = scene.getRoot();
        follow(root, "night", look.nightProperty());
        follow(root, "large", look.largeTextProperty());
        follow(root, "gloves", look.glovesProperty());
    }

    /**
     * A style sheet with the colours of every role, by day and by night, from the table that also draws the pictures.
     */
    private static String colours() {
        String sheet = ".root {\n%s}\n.root:night {\n%s}\n".formatted(Palette.DAY.css(), Palette.NIGHT.css());
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(sheet.getBytes(StandardCharsets.UTF_8));
    }

    private static void follow(Parent root, String name, ObservableValue<Boolean> setting) {
        PseudoClass state = PseudoClass.getPseudoClass(name);
        root.pseudoClassStateChanged(state, setting.getValue());
        setting.addListener((property, was, is) -> root.pseudoClassStateChanged(state, is));
    }
}
