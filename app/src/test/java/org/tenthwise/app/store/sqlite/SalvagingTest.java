package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.StoredEntry;

/** What comes out of a damaged store that is more than damaged. */
class SalvagingTest {

    private final SqliteStores stores = new SqliteStores();

    @TempDir
    private Path folder;

    private Path store;
    private Path rescued;

    @BeforeEach
    void name() {
        store = folder.resolve("store.db");
        rescued = folder.resolve("rescued.db");
    }

    @Test
    void ofAStoreOfTheFirstReleaseThatWasTakenOverTheEntriesBeforeTheDamageAreTaken() throws Exception {
        try (StoreOfBefore before = StoreOfBefore.make(store)) {
            for (String run : List.of("run-1", "run-2", "run-1")) {
                before.add(run, "35.010");
            }
        }
        stores.open(store).close(); // what vouches for the runs stands behind all of them
        List<StoredEntry> all;
        try (KeptEntries kept = stores.openToRead(store)) {
            all = kept.stored();
        }
        Sample.tamper(store, 3);

        Salvage made = stores.salvage(store, rescued);

        assertEquals(2, made.head().seq());
        assertEquals(Optional.of(3L), made.fault().orElseThrow().seq());
        try (KeptEntries kept = stores.openToRead(rescued)) {
            assertEquals(all.subList(0, 2), kept.stored());
            assertTrue(kept.verify().whole());
        }
        try (Ledger ledger = stores.open(rescued)) {
            assertEquals(4, ledger.head().seq(), "each run is taken over once more");
            Sample.read(ledger, "run-1", "35.020");
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void aStoreThatIsWrittenToMeanwhileGivesUpAsMuch() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            Sample.begin(ledger, "run-1");
            for (int i = 0; i < 3; i++) {
                ledger.append(IntStream.range(0, 1_000)
                        .mapToObj(n -> new NewEntry("run-1", Sample.AT, "A. Turner", Sample.reading("35.010")))
                        .toList());
            }
            Sample.tamper(store, 2_001);
            AtomicBoolean done = new AtomicBoolean();
            CompletableFuture<Void> writing = CompletableFuture.runAsync(() -> {
                while (!done.get()) {
                    write(ledger);
                }
            });
            try {
                Salvage made = stores.salvage(store, rescued);
                assertEquals(2_000, made.head().seq());
                assertEquals(2_000, made.runs().get(0).kept());
                assertTrue(made.runs().get(0).behind() >= 1_000, made::toString);
            } finally {
                done.set(true);
                writing.join();
            }
        }
        try (KeptEntries kept = stores.openToRead(rescued)) {
            assertEquals(2_000, kept.verify().entries());
        }
    }

    private static void write(Ledger ledger) {
        try {
            Sample.read(ledger, "run-1", "35.020");
        } catch (CouldNotSave e) {
            throw new AssertionError(e);
        }
    }
}
