package org.tenthwise.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

class StoreCareTest {

    private final Stores stores = new SqliteStores();
    private final ConcurrentLinkedQueue<String> notBackedUp = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<Message> goneBack = new ConcurrentLinkedQueue<>();
    private final CompletableFuture<CouldNotOpen> notWhole = new CompletableFuture<>();

    @TempDir
    private Path folder;

    private Path store;
    private CheckedHeads checked;
    private BackupBook book;
    private StoreCare care;

    @BeforeEach
    void care() {
        store = folder.resolve("shop.db");
        checked = new CheckedHeads(folder.resolve(CheckedHeads.FILE));
        book = new BackupBook(folder.resolve(BackupBook.FILE));
        care = care(stores);
    }

    private StoreCare care(Stores copied) {
        return new StoreCare(
                copied, store, checked, new Backups(copied, store, book, () -> Words.ENGLISH, Clock.systemUTC()));
    }

    @Test
    void whatIsFoundWellIsKeptAndTheNextOpeningGoesOnFromThere() throws Exception {
        try (Ledger ledger = open()) {
            Sample.note(ledger, "run-1");
            care.end();
        }
        Head head;
        try (Ledger ledger = open()) {
            head = ledger.head();
            care.end();
        }
        assertEquals(head, checked.of(store));
        Sample.tamper(store, 1);
        try (Ledger ledger = open()) {
            assertEquals(1, ledger.head().seq());
            CouldNotOpen found = notWhole.get(1, TimeUnit.MINUTES);
            assertTrue(
                    found.getMessage().startsWith("shop.db was closed: it is not intact. Entry 1"), found.getMessage());
            care.end();
        }
        assertEquals(Head.OF_NOTHING, checked.of(store));
        assertThrows(CouldNotOpen.class, this::open);
    }

    /** Whole as it is: only who knew more of it can tell. */
    @Test
    void aStoreThatLacksEntriesItHadIsToldOnce() throws Exception {
        try (Ledger ledger = open()) {
            Sample.note(ledger, "run-1");
            care.end();
        }
        Path before = folder.resolve("before.db");
        Files.copy(store, before);
        for (int i = 0; i < 2; i++) {
            try (Ledger ledger = open()) {
                care.end();
                Sample.note(ledger, "run-1");
            }
        }
        assertTrue(goneBack.isEmpty());
        Files.copy(before, store, StandardCopyOption.REPLACE_EXISTING);
        for (int i = 0; i < 2; i++) {
            try (Ledger ledger = open()) {
                assertEquals(1, ledger.head().seq());
                care.end();
            }
        }
        assertEquals(List.of(Message.of("store.gone-back", Path.of("shop.db"), 1L, 2L)), List.copyOf(goneBack));
    }

    @Test
    void aClosedRunIsBackedUpBeforeTheCareEnds() throws Exception {
        try (Ledger ledger = open()) {
            Sample.note(ledger, "run-1");
            ledger.append("run-1", Sample.AT, "A. Turner", new Event.Closed("B. Inspector", "accepted"));
            care.end();
            String closed = "-2-" + ledger.head().hash().substring(0, 16) + ".db";
            try (Stream<Path> made = Files.list(folder.resolve("shop.db-backups"))) {
                assertTrue(made.anyMatch(file -> file.toString().endsWith(closed)));
            }
        }
        assertTrue(notBackedUp.isEmpty());
    }

    @Test
    void aFailureIsToldOnceForEachReason() throws Exception {
        book.settings(new BackupSettings(Optional.of(folder.resolve("no stick")), 3));
        try (Ledger ledger = open()) {
            for (int i = 0; i < 2; i++) {
                ledger.append("run-" + i, Sample.AT, "A. Turner", new Event.Closed("B. Inspector", "accepted"));
            }
            care.end();
        }
        assertEquals(1, notBackedUp.size());
        assertTrue(book.state(store).failure().isPresent());
    }

    @Test
    void whatNobodyForesawIsNotKeptToItself() throws Exception {
        IllegalStateException unforeseen = new IllegalStateException("of a disk nobody knows");
        care = care(StoresWithAHitch.beforeCopying(stores, () -> {
            throw unforeseen;
        }));
        ConcurrentLinkedQueue<Throwable> told = new ConcurrentLinkedQueue<>();
        Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> told.add(failure));
        try (Ledger ledger = open()) {
            ledger.append("run-1", Sample.AT, "A. Turner", new Event.Closed("B. Inspector", "accepted"));
            care.end();
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(before);
        }
        assertTrue(told.contains(unforeseen));
    }

    /** A store of a million entries takes a minute to verify: nobody waits for that with the client closed. */
    @Test
    @Timeout(30)
    void whoeverClosesDoesNotWaitUntilALargeStoreIsVerified() throws Exception {
        CountDownLatch closed = new CountDownLatch(1);
        care = care(StoresWithAHitch.beforeVerifying(stores, () -> await(closed)));
        try (Ledger ledger = open()) {
            ledger.append("run-1", Sample.AT, "A. Turner", new Event.Closed("B. Inspector", "accepted"));
            care.end();
            assertEquals(Head.OF_NOTHING, checked.of(store));
            assertTrue(book.state(store).made().isPresent());
        } finally {
            closed.countDown();
            care.end();
        }
    }

    private static void await(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Ledger open() throws CouldNotOpen {
        return care.open(notWhole::complete, notBackedUp::add, goneBack::add);
    }
}
