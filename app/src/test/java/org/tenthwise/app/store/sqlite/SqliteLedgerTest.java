package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.LedgerContract;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;

class SqliteLedgerTest extends LedgerContract {

    @TempDir
    private Path folder;

    @Override
    protected Ledger empty() throws CouldNotOpen {
        return new SqliteStores().open(folder.resolve("empty.db"));
    }

    @Test
    void whatWasAddedIsThereAfterOpeningAgain() throws CouldNotOpen, CouldNotSave {
        Entry begun;
        Entry read;
        try (Ledger ledger = new SqliteStores().open(store())) {
            begun = Sample.begin(ledger, "run-1");
            read = Sample.read(ledger, "run-1", "35.010");
            assertEquals(List.of(begun, read), ledger.entries("run-1"));
        }
        try (Ledger ledger = new SqliteStores().openExisting(store())) {
            assertEquals(List.of(begun, read), ledger.entries("run-1"));
            assertEquals(3, Sample.read(ledger, "run-1", "35.020").seq());
            assertEquals(3, ledger.verify().entries());
            assertTrue(ledger.verify().whole());
        }
    }

    /** As where a backup is put back under a client that is open: what is said to be saved must lie in that file. */
    @Test
    void nothingIsSaidToBeSavedOnceAnotherFileLiesInThePlaceOfTheStore() throws Exception {
        Path backup = folder.resolve("backup.db");
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "run-1");
            new SqliteStores().copy(store(), backup);
            Files.delete(store());
            assertThrows(CouldNotSave.class, () -> Sample.read(ledger, "run-1", "35.010"));
            new SqliteStores().copy(backup, store());
            assertThrows(CouldNotSave.class, () -> Sample.read(ledger, "run-1", "35.020"));
            assertThrows(CouldNotOpen.class, () -> new SqliteStores().open(store()), "the other is still open");
        }
        try (Ledger ledger = new SqliteStores().open(store())) {
            assertEquals(2, Sample.read(ledger, "run-1", "35.030").seq());
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void ofSeveralEntriesNoneIsAddedWhereOneIsRefused() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "run-1");
            Head before = ledger.head();
            Sample.behindItsBack(
                    store(),
                    "CREATE TRIGGER third BEFORE INSERT ON ledger WHEN NEW.seq = 4 "
                            + "BEGIN SELECT RAISE(ABORT, 'not this one'); END");

            assertThrows(
                    CouldNotSave.class,
                    () -> ledger.append(
                            "run-1",
                            Sample.AT,
                            "A. Turner",
                            List.of(Sample.reading("35.010"), Sample.reading("35.020"), Sample.reading("35.030"))));
            assertEquals(before, ledger.head());

            Sample.behindItsBack(store(), "DROP TRIGGER third");
            assertEquals(
                    List.of(2L, 3L, 4L),
                    ledger
                            .append(
                                    "run-1",
                                    Sample.AT,
                                    "A. Turner",
                                    List.of(
                                            Sample.reading("35.010"),
                                            Sample.reading("35.020"),
                                            Sample.reading("35.030")))
                            .stream()
                            .map(Entry::seq)
                            .toList());
            assertEquals(4, ledger.entries("run-1").size());
        }
    }

    @Test
    void aRowHoldsTheHashOfItsTextAndOfTheRowBefore() throws CouldNotOpen, CouldNotSave {
        try (Ledger ledger = new SqliteStores().open(store())) {
            ledger.append(
                    "run-1",
                    OffsetDateTime.parse("2026-03-02T00:15:00.5+01:00"),
                    "Ä. Dreher",
                    Sample.reading("35.010"));
            Sample.read(ledger, "run-1", "35.020");
            String body = "{\"run\":\"run-1\",\"before\":{\"place\":1,\"hash\":\"" + RunChain.START
                    + "\"},\"kind\":\"reading-taken\",\"at\":\"2026-03-02T00:15:00.5+01:00\",\"by\":\"Ä. Dreher\","
                    + "\"event\":{\"step\":3,\"slot\":\"1.1\",\"typed\":{\"figure\":\"35.010\",\"unit\":\"mm\"}}}";
            String hash = Chain.hash(Chain.START, body.getBytes(UTF_8));

            assertEquals(
                    new StoredEntry(
                            1,
                            "run-1",
                            "reading-taken",
                            "2026-03-01T23:15:00.500Z",
                            "Ä. Dreher",
                            body,
                            Chain.START,
                            hash),
                    ledger.stored().get(0));
            assertEquals(hash, ledger.stored().get(1).previous());
            assertEquals(new Head(2, ledger.stored().get(1).hash()), ledger.head());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE ledger SET \"by\" = 'B' WHERE seq = 2",
                "DELETE FROM ledger WHERE seq = 2",
                "DELETE FROM ledger",
                "INSERT INTO ledger SELECT 4, run, kind, at, \"by\", body, previous, hash FROM ledger WHERE seq = 2",
                "INSERT INTO ledger SELECT NULL, run, kind, at, \"by\", body, previous, hash FROM ledger WHERE seq = 2",
                "INSERT OR REPLACE INTO ledger SELECT 2, run, kind, at, 'B', body, previous, hash FROM ledger WHERE "
                        + "seq = 2",
                "UPDATE OR REPLACE ledger SET seq = 1 WHERE seq = 2"
            })
    void noEntryIsChangedTakenAwayOrPutInBetween(String statement) throws CouldNotOpen, CouldNotSave {
        List<StoredEntry> before;
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "run-1");
            Sample.read(ledger, "run-1", "35.010");
            before = ledger.stored();
        }

        String refusal = assertThrows(SQLException.class, () -> Sample.behindItsBack(store(), statement))
                .getMessage();

        assertTrue(refusal.contains("ledger"), refusal);
        try (KeptEntries kept = new SqliteStores().openToRead(store())) {
            assertEquals(before, kept.stored());
        }
    }

    @Test
    void itIsReadWhileItIsWrittenTo() throws CouldNotOpen, CouldNotSave {
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "run-1");
            try (KeptEntries kept = new SqliteStores().openToRead(store())) {
                Entry read = Sample.read(ledger, "run-1", "35.010");

                assertEquals(ledger.head(), kept.head());
                assertEquals(read, kept.entries("run-1").get(1));
                assertEquals(List.of("run-1"), kept.runs());
                assertEquals(ledger.stored("run-1"), kept.stored("run-1"));
                assertTrue(kept.verify().whole());
            }
            assertEquals(3, Sample.read(ledger, "run-1", "35.020").seq());
        }
    }

    @Test
    void readingAStoreAtRestLeavesNothingBeside() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "run-1");
        }
        Path alone = Files.createDirectory(folder.resolve("alone")).resolve("copy.db");
        Files.copy(store(), alone);
        byte[] before = Files.readAllBytes(alone);

        try (KeptEntries kept = new SqliteStores().openToRead(alone)) {
            assertTrue(kept.verify().whole());
            assertEquals(1, kept.stored().size());
        }

        try (Stream<Path> files = Files.list(alone.getParent())) {
            assertEquals(List.of(alone), files.toList());
        }
        assertArrayEquals(before, Files.readAllBytes(alone));
    }

    @Test
    void aPathMayHaveAnyLetterAndFoldersYetToMake() throws CouldNotOpen, CouldNotSave {
        Path odd = folder.resolve("Halle 3?mode=ro&x#%41/Spindel ü/läufe;.db");
        try (Ledger ledger = new SqliteStores().open(odd)) {
            Sample.begin(ledger, "run-1");
        }

        assertTrue(Files.exists(odd));
        try (KeptEntries kept = new SqliteStores().openToRead(odd)) {
            assertEquals(1, kept.head().seq());
        }
    }

    private Path store() {
        return folder.resolve("store.db");
    }
}
