package org.tenthwise.app.demo;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;

/**
 * Presses keys on a scene where they lie, so that a key that is covered or shut is not pressed. Used from any thread
 * but the screen's; each press returns when what it set going has come to rest.
 */
final class KeyPresser {

    private static final int MOST_LOOKS = 200;
    private static final long BETWEEN_LOOKS_MS = 25;

    private final Scene scene;
    private final Runnable rest;

    /** @param rest returns when the thread of the ledger and the screen have done what they were given */
    KeyPresser(Scene scene, Runnable rest) {
        this.scene = scene;
        this.rest = rest;
    }

    /** Presses the key of that id. */
    void press(String id) {
        press("key " + id, node -> id.equals(node.getId()));
    }

    /** Presses whichever of two keys can be pressed first. */
    void pressEither(String one, String other) {
        press("key %s or %s".formatted(one, other), node -> one.equals(node.getId()) || other.equals(node.getId()));
    }

    /** Returns when a key of that id could be pressed. */
    void await(String id) {
        await("key " + id, node -> id.equals(node.getId()));
    }

    /** Presses the key that is spoken as that. */
    void pressSpoken(String words) {
        press("key \"" + words + "\"", node -> words.equals(node.getAccessibleText()));
    }

    /** Whether there is a key of that id that could be pressed, now or in a moment. */
    boolean sees(String id) {
        rest.run();
        return look(node -> id.equals(node.getId())).isPresent();
    }

    boolean seesSpoken(String words) {
        rest.run();
        return look(node -> words.equals(node.getAccessibleText())).isPresent();
    }

    /** The text of the label of that id. */
    String reads(String id) {
        rest.run();
        return onScreen(() -> all(scene.getRoot())
                .filter(node -> id.equals(node.getId()) && node instanceof Labeled && shown(node))
                .map(node -> ((Labeled) node).getText())
                .findFirst()
                .orElse(""));
    }

    /** Returns when nothing is going on any more. */
    void rest() {
        rest.run();
    }

    <T> T onScreen(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The walk was broken off", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("The screen could not be looked at", e);
        }
    }

    /** A key that is not there yet is waited for: a message takes no press in its first moment. */
    private void press(String what, Predicate<Node> wanted) {
        press(await(what, wanted));
    }

    private Node await(String what, Predicate<Node> wanted) {
        for (int looks = 0; looks < MOST_LOOKS; looks++) {
            rest.run();
            Optional<Node> key = look(wanted).filter(seen -> !onScreen(() -> deaf(seen)));
            if (key.isPresent()) {
                return key.get();
            }
            pause();
        }
        throw new IllegalStateException(
                "There is no %s to press among %s".formatted(what, onScreen(() -> all(scene.getRoot())
                        .map(Node::getId)
                        .filter(id -> id != null)
                        .distinct()
                        .toList())));
    }

    private void press(Node key) {
        onScreen(() -> {
            scene.getRoot().applyCss();
            scene.getRoot().layout(); // what was put on the screen just now lies nowhere yet
            Bounds bounds = key.localToScreen(key.getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mousePress(MouseButton.PRIMARY);
            robot.mouseRelease(MouseButton.PRIMARY);
            return true;
        });
        rest.run();
    }

    private Optional<Node> look(Predicate<Node> wanted) {
        return onScreen(() -> all(scene.getRoot())
                .filter(node -> node instanceof ButtonBase && wanted.test(node) && shown(node) && !node.isDisabled())
                .findFirst());
    }

    private static boolean shown(Node node) {
        return upwards(node).allMatch(Node::isVisible);
    }

    /** A key that has just come under the finger takes no press for a moment, by itself or with all that it lies in. */
    private static boolean deaf(Node node) {
        return upwards(node).anyMatch(Node::isMouseTransparent);
    }

    private static Stream<Node> upwards(Node node) {
        return Stream.iterate(node, at -> at != null, Node::getParent);
    }

    private static Stream<Node> all(Node node) {
        return Stream.concat(
                Stream.of(node),
                node instanceof Parent parent
                        ? parent.getChildrenUnmodifiable().stream().flatMap(KeyPresser::all)
                        : Stream.empty());
    }

    private static void pause() {
        try {
            Thread.sleep(BETWEEN_LOOKS_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The walk was broken off", e);
        }
    }
}
