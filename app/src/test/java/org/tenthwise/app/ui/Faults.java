package org.tenthwise.app.ui;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.tenthwise.app.picture.Face;
import org.tenthwise.app.text.TestLanguage;

/**
 * Finds what is wrong with a screen as it is laid out: every fault as a sentence. Lengths are of the reference size.
 */
final class Faults {

    private static final double LEAST_KEY = 64;
    private static final double LEAST_GAP = 8;
    private static final double LEAST_CONTRAST = 7;
    private static final double SLACK = 0.6;
    /** How far the boxes of two texts, which have room above and below the letters, may lie in one another. */
    private static final double LETTER_ROOM = 4;

    private static final Font FAMILY = family();

    private final Scene scene;
    private final double scale;
    private final List<Node> seen = new ArrayList<>();
    private final List<String> found = new ArrayList<>();

    private Faults(Scene scene) {
        this.scene = scene;
        Parent desk = (Parent) scene.getRoot().getChildrenUnmodifiable().get(0);
        this.scale = desk.getLocalToSceneTransform().getMxx();
        List<Node> layers = desk.getChildrenUnmodifiable();
        collect(layers.get(layers.size() - 1));
    }

    /** @param scene of a shell, laid out; a message on top is looked at alone */
    static List<String> of(Scene scene) {
        Faults faults = new Faults(scene);
        faults.keys();
        faults.texts();
        faults.outside();
        faults.inHand();
        return faults.found;
    }

    private static Font family() {
        try (InputStream file = Face.REGULAR.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Words on a screen, or spoken by it, that are left in English. */
    static List<String> english(Scene scene, TestLanguage language, String data) {
        return said(scene)
                .filter(text -> !language.english(text, data).isEmpty())
                .map(text -> "%s in \"%s\" is English".formatted(language.english(text, data), text))
                .toList();
    }

    private static Stream<String> said(Scene scene) {
        return new Faults(scene)
                .seen.stream()
                        .flatMap(node -> node instanceof Text text
                                ? Stream.of(text.getText())
                                : Stream.ofNullable(node.getAccessibleText()))
                        .distinct();
    }

    private void collect(Node node) {
        if (!node.isVisible()) {
            return;
        }
        seen.add(node);
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::collect);
        }
    }

    private <T> List<T> all(Class<T> type) {
        return seen.stream().filter(type::isInstance).map(type::cast).toList();
    }

    private void keys() {
        List<ButtonBase> keys = all(ButtonBase.class);
        for (ButtonBase key : keys) {
            Bounds box = box(key, key.getLayoutBounds());
            if (box.getWidth() < LEAST_KEY - SLACK || box.getHeight() < LEAST_KEY - SLACK) {
                found.add("key %s is %.0f by %.0f".formatted(name(key), box.getWidth(), box.getHeight()));
            }
            if (key.getAccessibleText() == null || key.getAccessibleText().isBlank()) {
                found.add("key %s has no spoken name".formatted(name(key)));
            }
        }
        for (int i = 0; i < keys.size(); i++) {
            for (int j = i + 1; j < keys.size(); j++) {
                gap(keys.get(i), keys.get(j));
            }
        }
    }

    private void gap(ButtonBase one, ButtonBase other) {
        Bounds a = box(one, one.getLayoutBounds());
        Bounds b = box(other, other.getLayoutBounds());
        double across = Math.max(b.getMinX() - a.getMaxX(), a.getMinX() - b.getMaxX());
        double down = Math.max(b.getMinY() - a.getMaxY(), a.getMinY() - b.getMaxY());
        if (Math.max(across, down) < LEAST_GAP - SLACK) {
            found.add("keys %s and %s are %.1f apart".formatted(name(one), name(other), Math.max(across, down)));
        }
    }

    private void texts() {
        List<Text> texts = all(Text.class).stream()
                .filter(text -> !text.getText().isBlank())
                .toList();
        for (Text text : texts) {
            contrast(text);
            lettering(text);
            cut(text);
            broken(text);
        }
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                Bounds a = tight(texts.get(i));
                Bounds b = tight(texts.get(j));
                boolean oneFlow = texts.get(i).getParent() instanceof TextFlow flow
                        && texts.get(j).getParent() == flow;
                if (!oneFlow && a.intersects(b)) {
                    found.add("\"%s\" lies on \"%s\""
                            .formatted(texts.get(i).getText(), texts.get(j).getText()));
                }
            }
        }
    }

    /** A sign that the family lacks is an empty box wherever the system has no other lettering. */
    private void lettering(Text text) {
        int lacking = FAMILY.canDisplayUpTo(text.getText().replaceAll("\\s", ""));
        if (lacking >= 0) {
            found.add("\"%s\" has a sign that the lettering lacks".formatted(text.getText()));
        }
    }

    private void contrast(Text text) {
        Color ground = ground(text).orElse(Color.TRANSPARENT);
        double contrast = contrast((Color) text.getFill(), ground);
        if (contrast < LEAST_CONTRAST) {
            found.add("\"%s\" has a contrast of %.1f (%s on %s)"
                    .formatted(text.getText(), contrast, text.getFill(), ground));
        }
    }

    private void cut(Text text) {
        if (!(text.getParent() instanceof Labeled labeled)) {
            return;
        }
        if (!text.getText().equals(labeled.getText())) {
            found.add("\"%s\" is cut to \"%s\"".formatted(labeled.getText(), text.getText()));
        }
        Bounds inner = box(text, text.getLayoutBounds());
        Bounds outer = box(labeled, labeled.getLayoutBounds());
        if (inner.getWidth() > outer.getWidth() + 2 || inner.getHeight() > outer.getHeight() + 2) {
            found.add("\"%s\" needs %.0f by %.0f and has %.0f by %.0f"
                    .formatted(
                            labeled.getText(),
                            inner.getWidth(),
                            inner.getHeight(),
                            outer.getWidth(),
                            outer.getHeight()));
        }
        if (text.getText().isEmpty() && !labeled.getText().isEmpty()) {
            found.add("\"%s\" is not shown".formatted(labeled.getText()));
        }
    }

    /** A word that is wider than the room its text wraps to goes on in the next line without a hyphen. */
    private void broken(Text text) {
        double room = text.getWrappingWidth();
        if (room <= 0 || !(text.getParent() instanceof Labeled)) {
            return;
        }
        for (String word : text.getText().split("[\\s-]+")) {
            Text alone = new Text(word);
            alone.setFont(text.getFont());
            if (alone.getLayoutBounds().getWidth() > room + 1) {
                found.add("\"%s\" in \"%s\" is broken: it needs %.0f and has %.0f"
                        .formatted(word, text.getText(), alone.getLayoutBounds().getWidth(), room));
            }
        }
    }

    private void outside() {
        Bounds whole = new BoundingBox(
                -SLACK, -SLACK, scene.getWidth() / scale + 2 * SLACK, scene.getHeight() / scale + 2 * SLACK);
        for (Node node : seen) {
            boolean drawn = node instanceof Labeled || node instanceof Canvas || node instanceof Text;
            Bounds box = box(node, node.getLayoutBounds());
            if (drawn && box.getWidth() > 0 && !whole.contains(box)) {
                found.add("%s reaches out of the screen: %s".formatted(name(node), box));
            }
        }
    }

    /** A list that has a row in hand shows it. */
    private void inHand() {
        PseudoClass inHand = PseudoClass.getPseudoClass("in-hand");
        scene.getRoot().lookupAll(".step").stream()
                .filter(row -> row.getPseudoClassStates().contains(inHand) && !row.isVisible())
                .forEach(row -> found.add("%s is in hand and not to be seen".formatted(name(row))));
    }

    private Bounds box(Node node, Bounds local) {
        Bounds in = node.localToScene(local);
        return new BoundingBox(
                in.getMinX() / scale, in.getMinY() / scale, in.getWidth() / scale, in.getHeight() / scale);
    }

    private Bounds tight(Text text) {
        Bounds box = box(text, text.getLayoutBounds());
        return new BoundingBox(
                box.getMinX() + 1,
                box.getMinY() + LETTER_ROOM,
                Math.max(0, box.getWidth() - 2),
                Math.max(0, box.getHeight() - 2 * LETTER_ROOM));
    }

    private static Optional<Color> ground(Node node) {
        for (Parent at = node.getParent(); at != null; at = at.getParent()) {
            if (at instanceof Region region && region.getBackground() != null) {
                List<BackgroundFill> fills = region.getBackground().getFills();
                for (int i = fills.size() - 1; i >= 0; i--) {
                    if (fills.get(i).getFill() instanceof Color colour && colour.getOpacity() == 1) {
                        return Optional.of(colour);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Contrast ratio of WCAG 2.2, "relative luminance" and "contrast ratio" in its glossary. */
    static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double part) {
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    private static String name(Node node) {
        if (node instanceof Text text) {
            return "\"" + text.getText() + "\"";
        }
        String spoken = node instanceof Labeled labeled && !labeled.getText().isEmpty()
                ? labeled.getText()
                : node.getAccessibleText();
        return node.getClass().getSimpleName() + " \"" + spoken + "\" " + (node.getId() == null ? "" : node.getId());
    }
}
