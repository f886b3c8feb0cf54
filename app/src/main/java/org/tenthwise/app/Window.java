package org.tenthwise.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.tenthwise.app.command.NoWindow;
import org.tenthwise.app.device.Display;

/** The one window, and the screen's thread under it. */
final class Window {

    private final Display display;
    private final CountDownLatch closed = new CountDownLatch(1);
    private boolean started;

    Window(Display display) {
        this.display = display;
    }

    /**
     * Starts the screen's thread and opens the window on a scene.
     *
     * @param making makes what the window shows, for a window of that size; on the screen's thread
     * @param scene the scene of what was made
     * @return what was made, once its window is open
     */
    <T> T open(Function<Display.Size, T> making, Function<T, Scene> scene) throws NoWindow {
        FutureTask<T> opening = new FutureTask<>(() -> {
            T made = making.apply(display.window());
            Stage stage = new Stage();
            stage.setTitle("Tenthwise");
            stage.setScene(scene.apply(made));
            stage.setFullScreenExitHint("");
            stage.setFullScreen(display.whole());
            stage.setOnHidden(hidden -> closed.countDown());
            stage.show();
            return made;
        });
        try {
            Platform.setImplicitExit(false);
            Platform.startup(opening);
            started = true;
            return opening.get();
        } catch (UnsupportedOperationException | LinkageError e) { // how JavaFX says that it cannot start here
            throw NoWindow.because(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The window was not opened", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("The window was not opened: " + e.getCause(), e);
        }
    }

    /** Returns when the window is closed. */
    void awaitClosed() throws InterruptedException {
        closed.await();
    }

    /** Returns when the screen's thread has done what it was given. */
    void rest() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(done::countDown);
        if (!done.await(1, TimeUnit.MINUTES)) {
            throw new IllegalStateException("The screen does not come to rest");
        }
    }

    /** Ends the screen's thread, if there is one: where it could not be started, ending it would wait for ever. */
    void close() {
        if (started) {
            Platform.exit();
        }
    }
}
