package org.tenthwise.app.ui.picture;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;

/** The screen thread, for tests that draw without a window. */
public final class Toolkit {

    private static final long SECONDS = 30;

    private Toolkit() {}

    /** Starts the toolkit unless another test has, and does {@code work} on its thread. */
    public static <T> T on(Callable<T> work) {
        try {
            Platform.startup(() -> {});
        } catch (IllegalStateException alreadyRunning) {
            // another test started it, and it serves them all
        }
        Platform.setImplicitExit(false);
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.call());
            } catch (Exception | AssertionError e) {
                done.completeExceptionally(e);
            }
        });
        try {
            return done.get(SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new AssertionError("Nothing came from the screen thread", e);
        }
    }
}
