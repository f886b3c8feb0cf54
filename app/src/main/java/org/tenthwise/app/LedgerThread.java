package org.tenthwise.app;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The one thread that uses the ledger. What is given to it is done in order, and all of it before the program ends. */
final class LedgerThread implements Executor {

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> new Thread(work, "ledger"));

    @Override
    public void execute(Runnable work) {
        worker.execute(work);
    }

    /** Does it there and brings the outcome back here. */
    <T> T ask(Callable<T> work) throws Exception {
        try {
            return worker.submit(work).get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Exception cause) {
                throw cause;
            }
            throw e;
        }
    }

    /** Returns when everything given to it before is done. */
    void rest() throws Exception {
        ask(() -> true);
    }

    /** Takes nothing new, and returns when everything is done. */
    void end() throws InterruptedException {
        worker.shutdown();
        boolean done = false;
        while (!done) { // what was taken is not given up
            done = worker.awaitTermination(1, TimeUnit.MINUTES);
        }
    }
}
