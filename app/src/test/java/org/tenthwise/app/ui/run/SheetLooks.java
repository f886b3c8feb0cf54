package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.ToDo;
import org.tenthwise.app.ui.picture.PictureView;

/** A run screen as it is laid out, looked at in classes of fault. Lengths are of the reference size. */
final class SheetLooks {

    /** Between the words on a key and its edge, across and down. */
    private static final double KEY_MARGIN = 5;

    private static final double KEY_MARGIN_DOWN = 2;
    private static final double SLACK = 1;
    /** Nothing is lettered smaller on a screen. */
    private static final double LEAST_LETTERS = 18;

    private static final List<Role> VERDICTS = List.of(Role.PASS, Role.FAIL, Role.CUT, Role.UNPROVEN);
    private static final PseudoClass IN_HAND = PseudoClass.getPseudoClass("in-hand");

    private final Scene scene;
    private final double scale;
    private final List<String> found = new ArrayList<>();

    SheetLooks(Scene scene) {
        this.scene = scene;
        this.scale = ((Parent) scene.getRoot().getChildrenUnmodifiable().get(0))
                .getLocalToSceneTransform()
                .getMxx();
    }

    List<String> faults() {
        keysKeepTheirMargin();
        nothingLeavesTheSheet();
        rowsAreEvenAndShowWhatComesNext();
        theHeadIsFilled();
        onlyTheWordIsInTheColourOfTheVerdict();
        theFigureIsAboveTheKeys();
        return found;
    }

    /** The caution is whole, in the ink of the text, and no smaller than the method. */
    List<String> faultsOfCaution(String caution) {
        TextFlow flow = (TextFlow) scene.lookup("#caution");
        if (!seen(flow)) {
            return List.of("the caution is not to be seen");
        }
        List<Text> pieces = flow.getChildren().stream().map(Text.class::cast).toList();
        Label method = (Label) scene.lookup("#method");
        if (!pieces.get(1).getText().equals(caution)) {
            found.add("the caution is \"%s\"".formatted(pieces.get(1).getText()));
        }
        if (!inside(box(flow), box(scene.getRoot())) || flow.getHeight() + SLACK < flow.prefHeight(flow.getWidth())) {
            found.add("the caution is cut: " + box(flow));
        }
        for (Text piece : pieces) {
            if (piece.getFont().getSize() < method.getFont().getSize()) {
                found.add("the caution is smaller than the method");
            }
            if (!piece.getFill().equals(method.getTextFill())) {
                found.add("the caution is paler than the method");
            }
        }
        return found;
    }

    /** What must not be missed stands beside the verdict, all of it. */
    List<String> faultsOf(RunScreenState.Found said) {
        whole((Labeled) scene.lookup("#beside-verdict"), String.join(" ", said.shown()));
        if (said.todo().lines().size() == 1) {
            whole((Labeled) scene.lookup("#what-next"), said.next());
        } else if (!said.todo().isEmpty()) {
            eachMoveHasItsLine(said.todo());
        }
        return found;
    }

    /** Whole, in no smaller letters than the usual ones, and under its name or under its part of the picture. */
    private void eachMoveHasItsLine(ToDo toDo) {
        List<Label> labels = moves();
        List<String> named = toDo.lines();
        List<String> under = Stream.concat(
                        toDo.first().stream(), toDo.sections().stream().flatMap(at -> at.lines().stream()))
                .toList();
        List<String> written = labels.stream().map(Label::getText).toList();
        if (!written.equals(named) && !written.equals(under)) {
            found.add("%s is written of %s".formatted(written, toDo));
            return;
        }
        for (Label label : labels) {
            whole(label, label.getText());
            if (label.getFont().getSize() < LEAST_LETTERS) {
                found.add("\"%s\" is lettered %.1f"
                        .formatted(label.getText(), label.getFont().getSize()));
            }
        }
        if (!written.equals(named)) {
            underItsRing(toDo, labels);
        }
    }

    private List<Label> moves() {
        return all(Label.class)
                .filter(label -> label.getStyleClass().contains("move"))
                .toList();
    }

    private void underItsRing(ToDo toDo, List<Label> labels) {
        Bounds drawn = box(picture().orElseThrow());
        double part = drawn.getWidth() / toDo.sections().size();
        int next = toDo.first().size();
        for (int i = 0; i < toDo.sections().size(); i++) {
            double left = drawn.getMinX() + i * part;
            for (String line : toDo.sections().get(i).lines()) {
                Bounds box = box(labels.get(next++));
                if (box.getMinY() < drawn.getMaxY()
                        || box.getMinX() < left - SLACK
                        || box.getMaxX() > left + part + SLACK) {
                    found.add("\"%s\" does not stand under its ring: %s, %s".formatted(line, box, drawn));
                }
            }
        }
    }

    private void whole(Labeled label, String words) {
        if (words.isEmpty()) {
            return;
        }
        if (!seen(label) || !label.getText().equals(words)) {
            found.add("\"%s\" is not to be seen".formatted(words));
        } else if (label.getHeight() + SLACK < label.prefHeight(label.getWidth())
                || !inside(box(label), box(scene.getRoot()))) {
            found.add("\"%s\" is cut".formatted(words));
        }
    }

    double pictureHeight() {
        return picture().map(picture -> box(picture).getHeight()).orElse(0.0);
    }

    /** The largest on the sheet. */
    Optional<PictureView> picture() {
        return scene.getRoot().lookupAll(".step-sheet").stream()
                .flatMap(SheetLooks::under)
                .filter(PictureView.class::isInstance)
                .map(PictureView.class::cast)
                .max(Comparator.comparingDouble(PictureView::getHeight));
    }

    /** What is asked, the figure and its unit: none under another, none under the keys. */
    private void theFigureIsAboveTheKeys() {
        Node keys = scene.lookup("#digit-7");
        if (!seen(keys)) {
            return;
        }
        double asked = box(scene.lookup("#prompt")).getMaxY();
        Bounds figure = box(scene.lookup("#reading").getParent());
        if (figure.getMinY() < asked - SLACK || figure.getMaxY() > box(keys).getMinY() + SLACK) {
            found.add("the figure is from %.0f to %.0f, asked until %.0f, the keys from %.0f"
                    .formatted(
                            figure.getMinY(), figure.getMaxY(), asked, box(keys).getMinY()));
        }
    }

    long rows() {
        return steps().size();
    }

    private List<Node> steps() {
        return scene.getRoot().lookupAll(".step").stream()
                .filter(SheetLooks::seen)
                .sorted(Comparator.comparingDouble((Node row) -> box(row).getMinY())
                        .thenComparingDouble(row -> box(row).getMinX()))
                .toList();
    }

    private void rowsAreEvenAndShowWhatComesNext() {
        List<Node> steps = steps();
        for (Node step : steps) {
            Bounds first = box(steps.get(0));
            Bounds box = box(step);
            if (Math.abs(box.getHeight() - first.getHeight()) > SLACK
                    || Math.abs(box.getWidth() - first.getWidth()) > SLACK) {
                found.add("row %s is %.0f by %.0f beside one of %.0f by %.0f"
                        .formatted(step.getId(), box.getWidth(), box.getHeight(), first.getWidth(), first.getHeight()));
            }
        }
        if (scene.lookup("#step-in-hand") != null) {
            if (steps.size() != 1 || !seen(scene.lookup("#step-in-hand"))) {
                found.add("the strip has %d cells".formatted(steps.size()));
            }
            return;
        }
        List<Boolean> inHand = steps.stream()
                .map(step -> step.getPseudoClassStates().contains(IN_HAND))
                .toList();
        int at = inHand.indexOf(true);
        boolean canGoOn = !((Button) scene.lookup("#later")).isDisabled();
        if (at < 0 || at == steps.size() - 1 && canGoOn) {
            found.add("the step in hand is not to be seen with what comes next");
        }
    }

    private void theHeadIsFilled() {
        Parent head = (Parent) scene.getRoot().lookup(".heading-line");
        List<Bounds> parts = head.getChildrenUnmodifiable().stream()
                .filter(node -> node.isVisible()
                        && (node instanceof Button || node.getStyleClass().contains("heading-cell")))
                .map(this::box)
                .sorted(Comparator.comparingDouble(Bounds::getMinX))
                .toList();
        for (int i = 1; i < parts.size(); i++) {
            double empty = parts.get(i).getMinX() - parts.get(i - 1).getMaxX();
            if (empty > 9 || empty < -SLACK) {
                found.add("%.0f between two parts of the head".formatted(empty));
            }
        }
    }

    private void onlyTheWordIsInTheColourOfTheVerdict() {
        Set<Color> colours = Stream.of(Palette.DAY, Palette.NIGHT)
                .flatMap(palette -> VERDICTS.stream().map(role -> Color.web(palette.hex(role))))
                .collect(Collectors.toSet());
        List<Text> coloured = texts(scene.getRoot())
                .filter(text -> !text.getText().isBlank() && colours.contains(text.getFill()))
                .toList();
        if (coloured.size() > 1) {
            found.add("in the colour of a verdict: "
                    + coloured.stream().map(Text::getText).toList());
        }
    }

    private void keysKeepTheirMargin() {
        all(Button.class)
                .filter(key -> !inside(box(key), box(scene.getRoot())))
                .forEach(key -> found.add("key %s reaches out of the screen".formatted(key.getId())));
        all(Button.class).forEach(key -> texts(key)
                .filter(text -> !text.getText().isBlank())
                .forEach(text -> {
                    Bounds inner = box(text);
                    Bounds outer = box(key);
                    boolean listRow = key.getStyleClass().contains("step");
                    double across = listRow ? 0 : KEY_MARGIN;
                    if (inner.getMinX() < outer.getMinX() + across
                            || inner.getMaxX() > outer.getMaxX() - across
                            || inner.getMinY() < outer.getMinY() + KEY_MARGIN_DOWN
                            || inner.getMaxY() > outer.getMaxY() - KEY_MARGIN_DOWN) {
                        found.add(
                                "\"%s\" touches the edge of its key: %s in %s".formatted(text.getText(), inner, outer));
                    }
                }));
    }

    /** What is written on the sheet lies on it, on nothing that lies beside it, and is whole. */
    private void nothingLeavesTheSheet() {
        for (Node sheet : scene.getRoot().lookupAll(".step-sheet")) {
            texts((Parent) sheet)
                    .filter(text -> !inside(box(text), box(sheet)))
                    .forEach(text -> found.add("\"%s\" reaches out of the sheet: %s in %s"
                            .formatted(text.getText(), box(text), box(sheet))));
        }
        all(Labeled.class).filter(label -> !label.getText().isEmpty()).forEach(label -> {
            if (label.isWrapText() && label.getHeight() + SLACK < label.minHeight(label.getWidth())) {
                found.add("\"%s\" has too little room".formatted(label.getText()));
            }
        });
    }

    private <T extends Node> Stream<T> all(Class<T> type) {
        return under(scene.getRoot()).filter(type::isInstance).map(type::cast);
    }

    private static Stream<Text> texts(Parent parent) {
        return under(parent).filter(Text.class::isInstance).map(Text.class::cast);
    }

    private static Stream<Node> under(Node node) {
        if (!node.isVisible()) {
            return Stream.empty();
        }
        Stream<Node> below = node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().flatMap(SheetLooks::under)
                : Stream.empty();
        return Stream.concat(Stream.of(node), below);
    }

    private static boolean seen(Node node) {
        return node == null || node.isVisible() && seen(node.getParent());
    }

    private static boolean inside(Bounds inner, Bounds outer) {
        return inner.getMinX() >= outer.getMinX() - SLACK
                && inner.getMaxX() <= outer.getMaxX() + SLACK
                && inner.getMinY() >= outer.getMinY() - SLACK
                && inner.getMaxY() <= outer.getMaxY() + SLACK;
    }

    private Bounds box(Node node) {
        Bounds in = node.localToScene(node.getLayoutBounds());
        return new BoundingBox(
                in.getMinX() / scale, in.getMinY() / scale, in.getWidth() / scale, in.getHeight() / scale);
    }
}
