package org.tenthwise.app.backup;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.model.words.Message;

/**
 * Looks after a store while it is open, on threads of its own: verifies all of it once, since opening looked only
 * behind the last entry that was found to be well, and makes a backup after each closed run and every day.
 */
public final class StoreCare {

    private static final long HOURS_BETWEEN_LOOKS = 1;

    /** How long whoever closes the client waits for a store to be verified: as good as all are by then. */
    private static final long MILLISECONDS_TO_THE_END = 2_000;

    private final Stores stores;
    private final Path store;
    private final CheckedHeads checked;
    private final Backups backups;
    private Optional<ScheduledExecutorService> worker = Optional.empty();
    private Thread verifying = new Thread();
    private Optional<String> told = Optional.empty();

    public StoreCare(Stores stores, Path store, CheckedHeads checked, Backups backups) {
        this.stores = stores;
        this.store = store;
        this.checked = checked;
        this.backups = backups;
    }

    /**
     * Opens the store, and begins to look after it.
     *
     * @param notWhole is told, on a thread of the care, if what was not looked at on opening is not as it was written
     * @param notBackedUp is told why a backup was not made, once for each reason
     * @param goneBack is told if the store is whole and yet without the entries it had when it was last verified here
     */
    public synchronized Ledger open(
            Consumer<CouldNotOpen> notWhole, Consumer<String> notBackedUp, Consumer<Message> goneBack)
            throws CouldNotOpen {
        Head known = checked.of(store);
        Ledger ledger = stores.open(store, known);
        if (!known.equals(Head.OF_NOTHING) && !ledger.headAt(known.seq()).equals(Optional.of(known))) {
            goneBack.accept(Message.of(
                    "store.gone-back", store.getFileName(), ledger.head().seq(), known.seq()));
        }
        ScheduledExecutorService begun = Executors.newSingleThreadScheduledExecutor(StoreCare::thread);
        worker = Optional.of(begun);
        verifying = thread(() -> verify(notWhole));
        verifying.setDaemon(true);
        verifying.start();
        begun.scheduleWithFixedDelay(() -> backUpIfDue(notBackedUp), 0, HOURS_BETWEEN_LOOKS, TimeUnit.HOURS);
        return new WatchedLedger(ledger, () -> soon(begun, () -> backUp(notBackedUp)));
    }

    /**
     * Returns when the backups that were begun are made. A store too large to be verified by then is looked at anew.
     */
    public void end() throws InterruptedException {
        verifying.join(MILLISECONDS_TO_THE_END);
        Optional<ScheduledExecutorService> begun = stop();
        if (begun.isPresent()) {
            boolean done = false;
            while (!done) { // a backup of the run just closed is not given up
                done = begun.get().awaitTermination(1, TimeUnit.MINUTES);
            }
        }
    }

    private synchronized Optional<ScheduledExecutorService> stop() {
        Optional<ScheduledExecutorService> begun = worker;
        worker = Optional.empty();
        begun.ifPresent(ScheduledExecutorService::shutdown);
        return begun;
    }

    private void verify(Consumer<CouldNotOpen> notWhole) {
        try {
            checked.keep(store, stores.makeSure(store));
        } catch (CouldNotOpen e) {
            checked.keep(store, Head.OF_NOTHING);
            if (stop().isPresent()) {
                notWhole.accept(e);
            }
        } catch (CouldNotRead e) {
            // nothing is found out, and whoever reads next is told
        } catch (RuntimeException e) {
            unforeseen(e);
        }
    }

    private void backUpIfDue(Consumer<String> notBackedUp) {
        if (backups.isDue()) {
            backUp(notBackedUp);
        }
    }

    /** What nobody foresaw is told as well, and does not keep the next from being made. */
    private void backUp(Consumer<String> notBackedUp) {
        try {
            Optional<String> failure = backups.make().failure();
            if (failure.isPresent() && !failure.equals(told)) {
                notBackedUp.accept(failure.get());
            }
            told = failure;
        } catch (RuntimeException e) {
            unforeseen(e);
        }
    }

    /** A scheduled executor keeps it to itself. */
    private static void unforeseen(RuntimeException failure) {
        Thread here = Thread.currentThread();
        here.getUncaughtExceptionHandler().uncaughtException(here, failure);
    }

    private static void soon(ScheduledExecutorService worker, Runnable work) {
        try {
            worker.execute(work);
        } catch (RejectedExecutionException e) {
            // the store was closed for good reason
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "store-care");
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }
}
