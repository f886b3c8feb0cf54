package org.tenthwise.app;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.tenthwise.app.command.CommandLines;
import org.tenthwise.model.words.Words;

/** Takes what nobody caught: a message on the screen while there is one, otherwise one line. */
final class LastResort implements Thread.UncaughtExceptionHandler {

    private final PrintWriter err;
    private final Words words;
    private final AtomicReference<Optional<Runnable>> screen = new AtomicReference<>(Optional.empty());

    LastResort(PrintWriter err, Words words) {
        this.err = err;
        this.words = words;
    }

    /** @param tell tells the person at the screen; on any thread */
    void leadTo(Runnable tell) {
        screen.set(Optional.of(tell));
    }

    /** There is no screen any more. */
    void leadNowhere() {
        screen.set(Optional.empty());
    }

    @Override
    public void uncaughtException(Thread thread, Throwable e) {
        screen.get().ifPresentOrElse(Runnable::run, () -> {
            err.println(CommandLines.unforeseen(e, words));
            err.flush();
        });
    }
}
