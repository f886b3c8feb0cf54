package org.tenthwise.app.session;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Runs work away from the screen thread, in order, and brings the outcome back to it.
 *
 * <p>The client passes a single worker thread and the screen's own queue; tests pass {@code Runnable::run} twice.
 */
public final class Background {

    private final Executor worker;
    private final Executor screen;

    public Background(Executor worker, Executor screen) {
        this.worker = worker;
        this.screen = screen;
    }

    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        worker.execute(() -> {
            T outcome;
            try {
                outcome = work.call();
            } catch (Exception e) { // the one place that may: the work is somebody else's
                screen.execute(() -> failed.accept(e));
                return;
            }
            screen.execute(() -> done.accept(outcome));
        });
    }
}
