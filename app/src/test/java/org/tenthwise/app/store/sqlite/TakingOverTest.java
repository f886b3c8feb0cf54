package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.Before;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Message;

class TakingOverTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void makeAStoreOfBefore() throws Exception {
        store = folder.resolve("store.db");
        try (StoreOfBefore before = StoreOfBefore.make(store)) {
            before.add("run-1", "35.010");
            before.add(new NewEntry(
                    Entry.SHOP,
                    Sample.AT,
                    "A. Turner",
                    new ShopEvent.GaugeKnown(new Gauge("DG-01", GaugeKind.DEPTH_GAUGE, Optional.empty()))));
            before.add("run-2", "35.020");
            before.add("run-1", "35.030");
        }
    }

    @Test
    void eachRunGetsOneEntryThatVouchesForThoseBeforeIt() throws Exception {
        List<StoredEntry> before;
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            before = kept.stored();
        }
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            List<StoredEntry> after = ledger.stored();

            assertEquals(before, after.subList(0, 4));
            assertEquals(
                    List.of("run-1", Entry.SHOP, "run-2"),
                    after.subList(4, 7).stream().map(StoredEntry::run).toList());
            assertTrue(
                    after.subList(4, 7).stream().allMatch(entry -> entry.kind().equals("taken-over")));
            assertEquals(7, after.size());
            assertEquals(3, Before.in(after.get(4).body()).orElseThrow().place());
            assertEquals(Optional.empty(), ledger.verify().fault());
            assertEquals(8, Sample.read(ledger, "run-1", "35.040").seq());
        }
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            assertEquals(8, ledger.head().seq()); // taken over once
            assertEquals(4, ledger.runHead("run-1").place());
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void aStoreWhoseRunsAreTiedGetsNoMoreEntriesAndAnOlderReleaseIsKeptOff() throws Exception {
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            assertEquals(7, ledger.head().seq());
        }
        Sample.behindItsBack(
                store,
                "DROP TABLE IF EXISTS imported",
                "DROP TABLE IF EXISTS imported_from",
                "PRAGMA user_version = 2");
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            assertEquals(7, ledger.head().seq());
            assertTrue(ledger.verify().whole());
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store)) {
            assertEquals(Schema.NEWEST, Schema.step(connection));
        }
    }

    @Test
    void theHeadOfARunIsTheSameReadFromItsLastEntryAndFromItsFirst() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(walked(kept, "run-1"), kept.runHead("run-1"));
            assertEquals(2, kept.runHead("run-1").place());
            assertEquals(RunHead.OF_NOTHING, kept.runHead("run-3"));
        }
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            for (String run : List.of("run-1", "run-2", Entry.SHOP)) {
                assertEquals(walked(ledger, run), ledger.runHead(run));
            }
            Sample.read(ledger, "run-2", "35.050");
            assertEquals(walked(ledger, "run-2"), ledger.runHead("run-2"));
            assertEquals(3, ledger.runHead("run-2").place());
            try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                assertEquals(ledger.runHead("run-2"), kept.runHead("run-2"));
            }
        }
    }

    @Test
    void readingAStoreOfBeforeTakesNothingOver() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertTrue(kept.verify().whole());
            assertEquals(4, kept.head().seq());
        }
    }

    @Test
    void anEntryThatVouchesForNothingInAStoreTakenOverIsAFault() throws Exception {
        Sample.behindItsBack(
                store,
                "DROP TABLE IF EXISTS imported",
                "DROP TABLE IF EXISTS imported_from",
                "PRAGMA user_version = 2");

        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(
                    Optional.of(new Verification.Fault(Optional.of(4L), Message.of("fault.run-not-tied", 4L, "run-1"))),
                    kept.verify().fault());
        }
    }

    @Test
    void anEntryOfARunTakenOutAndTheLedgerMadeAnewIsFoundInTheRun() throws Exception {
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            RunChain chain = new RunChain();
            List<StoredEntry> run = ledger.stored("run-1");
            chain.next(run.get(0));
            chain.next(run.get(2));
            assertFalse(chain.fault().isEmpty());
        }
    }

    private static RunHead walked(KeptEntries kept, String run) {
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : kept.stored(run)) {
            head = head.and(entry);
        }
        return head;
    }
}
