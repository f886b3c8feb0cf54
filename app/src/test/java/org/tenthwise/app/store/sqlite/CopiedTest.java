package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Verification;

/** A store copied at any moment, with or without what lies beside it. */
class CopiedTest {

    @TempDir
    private Path folder;

    private Path store;
    private Path copy;

    @BeforeEach
    void name() throws Exception {
        store = folder.resolve("store.db");
        copy = Files.createDirectory(folder.resolve("copy")).resolve("store.db");
    }

    @Test
    void theOneFileHoldsEveryEntrySaidToBeSavedWhileTheStoreIsOpen() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            for (int i = 1; i <= 30; i++) {
                Sample.read(ledger, "run-1", "35.0" + i);
                Files.copy(store, copy);
                assertEquals(ledger.verify(), verified(copy));
                assertEquals(i, verified(copy).entries());
                Files.delete(copy);
            }
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    0,
                    files.filter(file -> file.toString().endsWith("-journal") && Files.exists(file))
                            .count());
        }
    }

    @Test
    void aStoreOfBeforeCopiedWithoutItsLogIsNeverSimplyWhole() throws Exception {
        try (StoreOfBefore before = StoreOfBefore.make(store)) {
            before.add("run-1", "35.010");
            Files.copy(store, copy);

            assertTrue(verified(store).mayLackItsLast());
            assertEquals(1, verified(store).entries());
            assertTrue(verified(copy).mayLackItsLast());
            assertEquals(0, verified(copy).entries());
        }
    }

    @Test
    void aStoreOfBeforeIsOneFileOnceItWasOpenedToWrite() throws Exception {
        try (StoreOfBefore before = StoreOfBefore.make(store)) {
            before.add("run-1", "35.010");
            before.add("run-1", "35.020");
            Files.copy(store, copy);
            Files.copy(Path.of(store + "-wal"), Path.of(copy + "-wal")); // as it is left where the power goes
        }
        try (Ledger ledger = new SqliteStores().openExisting(copy)) {
            assertEquals(2 + 1, ledger.head().seq());
            assertFalse(Files.exists(Path.of(copy + "-wal")));
            Path alone = folder.resolve("alone.db");
            Files.copy(copy, alone);
            assertEquals(3, verified(alone).entries());
            assertFalse(verified(alone).mayLackItsLast());
            assertTrue(verified(alone).whole());
        }
    }

    @Test
    void anEntryLeftUnfinishedIsTakenBackBeforeTheStoreIsRead() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            for (int i = 0; i < 20; i++) {
                Sample.read(ledger, "run-1", "35.010");
            }
        }
        Verification whole = verified(store);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("PRAGMA cache_size = 1");
            statement.executeUpdate("BEGIN");
            for (int i = 21; i < 200; i++) {
                statement.executeUpdate(
                        ("INSERT INTO ledger SELECT %d, run, kind, at, \"by\", body || ' ', previous, hash FROM "
                                        + "ledger WHERE seq = 1")
                                .formatted(i));
            }
            Files.copy(store, copy); // half of it is in the file by now
            Files.copy(Path.of(store + "-journal"), Path.of(copy + "-journal"));
            statement.executeUpdate("ROLLBACK");
        }
        assertTrue(Files.size(Path.of(copy + "-journal")) > 0);
        assertTrue(new String(Files.readAllBytes(copy), UTF_8).contains("} "), "nothing is half done");

        assertEquals(whole, verified(copy));
        try (Ledger ledger = new SqliteStores().openExisting(copy)) {
            assertEquals(21, Sample.read(ledger, "run-1", "35.020").seq());
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void whatCannotBeTakenBackIsSaid() throws Exception {
        assertEquals(
                "store.db has an entry that was never finished, and it cannot be written to, so the entry "
                        + "cannot be undone. "
                        + "It was left as it is. Allow writing to it, or copy it to where it can be written to, "
                        + "store.db-journal with it, and "
                        + "open the copy.",
                new StoreErrors(StoreFile.of(store))
                        .opening(new SQLiteException("", SQLiteErrorCode.SQLITE_READONLY_ROLLBACK))
                        .getMessage());
    }

    @Test
    void whoReadsForLongDoesNotKeepTheOneWhoWritesWaiting() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
            try (Connection reading = Connections.toRead(StoreFile.of(store).urlToShare());
                    Connection held = Connections.copyInMemory(reading)) {
                assertEquals("1", Connections.answer(held, "SELECT count(*) FROM ledger"));
                assertEquals(2, Sample.read(ledger, "run-1", "35.010").seq());
                assertEquals("1", Connections.answer(held, "SELECT count(*) FROM ledger"));
            }
        }
    }

    @Test
    void aStoreOfBeforeThatIsBeingReadIsNotTakenOver() throws Exception {
        StoreOfBefore.make(store).close();
        try (Connection reading = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statement statement = reading.createStatement()) {
            statement.executeQuery("SELECT count(*) FROM ledger");

            assertEquals(
                    "store.db was not opened: another program is reading it. It was left as it is. Close that "
                            + "program, then open "
                            + "it again.",
                    assertThrows(org.tenthwise.app.store.CouldNotOpen.class, () -> new SqliteStores()
                                    .openExisting(store))
                            .getMessage());
        }
    }

    private static Verification verified(Path store) throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.verify();
        }
    }
}
