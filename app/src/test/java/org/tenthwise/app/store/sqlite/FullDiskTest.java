package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.run.Entry;

class FullDiskTest {

    @TempDir
    private Path folder;

    @Test
    void nothingIsLostAndTheLedgerGoesOnOnceThereIsRoom() throws Exception {
        Path store = folder.resolve("store.db");
        new SqliteStores().open(store).close();
        StoreFile file = StoreFile.of(store);
        Connection connection = Connections.toWrite(file.urlToWrite());
        try (SqliteLedger ledger =
                new SqliteLedger(file, StoreLock.take(file.lock()).orElseThrow(), connection)) {
            List<Entry> saved = new ArrayList<>();
            saved.add(Sample.begin(ledger, "run-1"));
            pages(connection, Integer.parseInt(Connections.answer(connection, "PRAGMA page_count")) + 2);

            CouldNotSave refusal = assertThrows(CouldNotSave.class, () -> {
                while (saved.size() < 10_000) {
                    saved.add(Sample.read(ledger, "run-1", "35.010"));
                }
            });

            assertEquals(
                    "The entry was not saved: the disk is full. Everything saved before is safe. "
                            + "Free some space, then save again.",
                    refusal.getMessage());
            assertEquals(CouldNotSave.Reason.DISK_FULL, refusal.reason());
            assertEquals(saved, ledger.entries("run-1"));
            assertTrue(ledger.verify().whole());

            pages(connection, 10_000);
            saved.add(Sample.read(ledger, "run-1", "35.020"));
            assertEquals(saved.size(), ledger.head().seq());
            assertEquals(saved, ledger.entries("run-1"));
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void aStoreThatTakesNothingMoreIsSaidToBeSo() throws Exception {
        Path store = folder.resolve("store.db");
        new SqliteStores().open(store).close();
        StoreFile file = StoreFile.of(store);
        Connection connection = Connections.toWrite(file.urlToWrite());
        try (SqliteLedger ledger =
                new SqliteLedger(file, StoreLock.take(file.lock()).orElseThrow(), connection)) {
            try (Statement statement = connection.createStatement()) {
                statement.executeUpdate("PRAGMA query_only = 1");
            }

            CouldNotSave refusal = assertThrows(CouldNotSave.class, () -> Sample.begin(ledger, "run-1"));

            assertEquals(
                    "The entry was not saved: store.db cannot be written to. Everything saved before is safe. "
                            + "Allow writing to it, then save again.",
                    refusal.getMessage());
            assertEquals(CouldNotSave.Reason.READ_ONLY, refusal.reason());
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # what SQLite says, the reason given
        SQLITE_FULL,          DISK_FULL
        SQLITE_IOERR_SHMSIZE, DISK_FULL
        SQLITE_IOERR_WRITE,   OTHER
        SQLITE_IOERR_FSYNC,   OTHER
        SQLITE_READONLY,      READ_ONLY
        SQLITE_CORRUPT_VTAB,  DAMAGED
        SQLITE_NOTADB,        DAMAGED
        SQLITE_BUSY_SNAPSHOT, BUSY
        """)
    void whatStoodInTheWayIsTold(SQLiteErrorCode said, CouldNotSave.Reason reason) {
        StoreErrors trouble = new StoreErrors(new StoreFile(folder.resolve("store.db")));

        CouldNotSave refusal = trouble.saving(new SQLiteException("", said));

        assertEquals(reason, refusal.reason());
        assertTrue(refusal.getMessage().startsWith("The entry was not saved: "), refusal.getMessage());
    }

    @Test
    void aStoreThatIsNotThereYetIsNotSaidToHoldAnything() throws Exception {
        Path store = folder.resolve("store.db");
        SQLiteException full = new SQLiteException("", SQLiteErrorCode.SQLITE_FULL);
        assertEquals(
                "store.db was not made: the disk is full. Nothing is saved yet. Free some space, then open it again.",
                new StoreErrors(StoreFile.of(store)).opening(full).getMessage());

        new SqliteStores().open(store).close();
        assertEquals(
                "store.db was not opened: the disk is full. What is in it is safe. Free some space, then open it "
                        + "again.",
                new StoreErrors(StoreFile.of(store)).opening(full).getMessage());
    }

    private static void pages(Connection connection, int most) throws SQLException {
        assertEquals(Integer.toString(most), Connections.answer(connection, "PRAGMA max_page_count = " + most));
    }
}
