package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.BeforeAll;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.app.text.Spoken;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.picture.Shots;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.LookStore;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Theme;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;

/**
 * A test that shows screens without a display.
 *
 * <p>{@link #seen} shows a screen on every {@link Display}, saves a picture of each under {@code target/screens} and
 * finds the faults of each. {@link #on} runs what touches nodes on the screen thread.
 */
public abstract class ScreenTest {

    /** Read once for all tests: that takes longer than a screen takes to be drawn. */
    private static final ScreenFaces FACES = new ScreenFaces();

    private static final TextMetrics LETTERING = new TextMetrics(Words.ENGLISH);
    private static final Path PICTURES = Path.of("target", "screens");

    protected final Words words = language().words().lettered();

    /** What the screens speak; but for English, no word of English may be seen. */
    protected TestLanguage language() {
        return TestLanguage.ENGLISH;
    }

    /** What the screens show as it was given, in which plain English may stand. */
    protected String data() {
        return "";
    }

    /** What the screens are shown on. */
    protected List<Display> displays() {
        return switch (language()) {
            case ENGLISH -> Display.ALL;
            case MADE_UP -> List.of(Display.DAY, Display.UPRIGHT);
            case GERMAN -> List.of(Display.DAY, Display.LARGE, Display.UPRIGHT);
        };
    }

    /** A shell with the look it follows, for one display. */
    public record Window(Shell shell, Look look, Words words, TestLanguage language) {

        public Scene scene() {
            return shell.scene();
        }

        /** The words the window speaks, beside English; the made-up ones where it speaks English. */
        public Spoken spoken() {
            if (language == TestLanguage.GERMAN) {
                return new Spoken(
                        new Languages(List.of(Locale.ENGLISH, Locale.GERMAN), Locale.ENGLISH, Words::of),
                        Locale.GERMAN);
            }
            Languages two = new Languages(
                    List.of(Locale.ENGLISH, MadeUpLanguage.LOCALE),
                    Locale.ENGLISH,
                    place -> place.equals(MadeUpLanguage.LOCALE) ? MadeUpLanguage.words() : Words.ENGLISH);
            return new Spoken(two, language == TestLanguage.ENGLISH ? Locale.ENGLISH : MadeUpLanguage.LOCALE);
        }

        /** The frames of the pictures on it. */
        public PictureFrames pictures() {
            return new PictureFrames(FACES, LETTERING, look);
        }
    }

    @BeforeAll
    static void startToolkit() throws InterruptedException {
        CompletableFuture<Void> started = new CompletableFuture<>();
        try {
            Platform.startup(() -> started.complete(null));
        } catch (IllegalStateException alreadyStarted) {
            started.complete(null);
        }
        Platform.setImplicitExit(false);
        try {
            started.get(30, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new AssertionError("The toolkit did not start", e);
        }
    }

    /** Runs {@code work} on the screen thread and hands back what it made; its failure is the test's. */
    protected static <T> T on(Supplier<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.get());
            } catch (RuntimeException | Error e) {
                done.completeExceptionally(e);
            }
        });
        try {
            return done.get(60, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new AssertionError(e.getCause());
        } catch (InterruptedException | TimeoutException e) {
            throw new AssertionError(e);
        }
    }

    protected static void run(Runnable work) {
        on(() -> {
            work.run();
            return Boolean.TRUE;
        });
    }

    /** A shell on {@code display}; on the screen thread only. */
    protected final Window window(Display display) {
        Look look = new Look(LookStore.inMemory(display.look()));
        return new Window(
                new Shell(new Theme(look, FACES), words, display.width(), display.height(), display.dots()),
                look,
                words,
                language());
    }

    /**
     * Shows a screen on every display, saves the pictures {@code <screen>-<state>-<display>.png}, and fails with every
     * fault found on any of them.
     *
     * @param made makes the screen and brings it into the state to see; on the screen thread
     */
    protected final void seen(String screen, String state, Function<Window, Screen> made) {
        seen(screen, state, made, window -> {});
    }

    /** @param then what is done to it once it is shown */
    protected final void seen(String screen, String state, Function<Window, Screen> made, Consumer<Window> then) {
        List<String> faults = new ArrayList<>();
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell().show(made.apply(window));
                then.accept(window);
                lookAt(window, screen + "-" + state + "-" + display.name())
                        .forEach(fault -> faults.add(display.name() + ": " + fault));
            });
        }
        assertEquals("", String.join("\n", faults), screen + " " + state);
    }

    /**
     * Fails where what has the id {@code id} is not to be seen on one of the displays as soon as the screen is shown.
     */
    protected final void seenAtOnce(String id, Function<Window, Screen> made) {
        List<String> missing = new ArrayList<>();
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell().show(made.apply(window));
                settle(window.scene());
                Node node = window.scene().lookup("#" + id);
                if (node == null || !shown(node)) {
                    missing.add(display.name());
                }
            });
        }
        assertEquals(List.of(), missing, id);
    }

    /** Lays out what {@code window} shows, saves a picture of it and hands back its faults; on the screen thread. */
    protected final List<String> lookAt(Window window, String name) {
        Scene scene = window.scene();
        settle(scene);
        Shots.save(
                Shots.image(scene.snapshot(null)), PICTURES.resolve(language().prefix() + name + ".png"));
        List<String> faults = new ArrayList<>(Faults.of(scene));
        faults.addAll(Faults.english(scene, language(), data()));
        return faults;
    }

    /** Styles and lays out {@code scene} as a pulse would. */
    protected static void settle(Scene scene) {
        for (int i = 0; i < 3; i++) {
            scene.getRoot().resize(scene.getWidth(), scene.getHeight());
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
    }

    /** Presses the key with the id {@code id}, which must be there, to be seen and not disabled. */
    protected static void press(Scene scene, String id) {
        settle(scene);
        Node node = scene.lookup("#" + id);
        if (!(node instanceof Button key) || key.isDisabled() || !shown(key)) {
            throw new AssertionError("There is no key " + id + " to press: " + node);
        }
        key.fire();
    }

    /** Types {@code text} on a hardware keyboard; a line feed is Enter. */
    protected static void type(Scene scene, String text) {
        for (char character : text.toCharArray()) {
            if (character == '\n') {
                strike(scene, KeyCode.ENTER);
            } else {
                Event.fireEvent(
                        target(scene),
                        new KeyEvent(
                                KeyEvent.KEY_TYPED,
                                String.valueOf(character),
                                "",
                                KeyCode.UNDEFINED,
                                false,
                                false,
                                false,
                                false));
            }
        }
    }

    /** Presses and lets go of a key of a hardware keyboard. */
    protected static void strike(Scene scene, KeyCode code) {
        Event.fireEvent(target(scene), new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
        Event.fireEvent(target(scene), new KeyEvent(KeyEvent.KEY_RELEASED, "", "", code, false, false, false, false));
    }

    /** Presses from the keyboard the key that has the focus. */
    protected static void pressFocused(Scene scene) {
        Event.fireEvent(
                target(scene), new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, true, false, false));
    }

    private static Node target(Scene scene) {
        return scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
    }

    protected static boolean shown(Node node) {
        return node == null || node.isVisible() && shown(node.getParent());
    }
}
