package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotOpen.Reason;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;

class OpeningTest {

    /** The ways to open a store that is there. */
    enum Way {
        TO_READ {
            @Override
            KeptEntries open(Path path) throws CouldNotOpen {
                return new SqliteStores().openToRead(path);
            }
        },
        EXISTING {
            @Override
            KeptEntries open(Path path) throws CouldNotOpen {
                return new SqliteStores().openExisting(path);
            }
        },
        OR_MAKE {
            @Override
            KeptEntries open(Path path) throws CouldNotOpen {
                return new SqliteStores().open(path);
            }
        };

        abstract KeptEntries open(Path path) throws CouldNotOpen;
    }

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void nameTheStore() {
        store = folder.resolve("store.db");
    }

    @ParameterizedTest
    @EnumSource(names = {"TO_READ", "EXISTING"})
    void noStoreIsMadeWhereOneIsExpected(Way way) throws IOException {
        refused(
                way,
                Reason.NOT_FOUND,
                "There is no store.db. Nothing was made in its place. Give the path of a store.");

        assertEquals(List.of(), files());
    }

    @ParameterizedTest
    @EnumSource
    void aFileOfTextIsNoStoreAndStaysAsItIs(Way way) throws IOException {
        Files.writeString(store, "seq,run\n".repeat(1000));
        staysAsItIs(
                way,
                Reason.NOT_A_STORE,
                "store.db is not a Tenthwise store. It was left as it is. Give the path of a store.");
    }

    @ParameterizedTest
    @EnumSource
    void anEmptyFileIsNoStoreAndStaysEmpty(Way way) throws IOException {
        Files.createFile(store);
        staysAsItIs(
                way,
                Reason.NOT_A_STORE,
                "store.db is not a Tenthwise store. It was left as it is. Give the path of a store.");
    }

    @ParameterizedTest
    @EnumSource
    void aFolderIsNoStore(Way way) throws IOException {
        Files.createDirectory(store);
        refused(
                way,
                Reason.NOT_A_STORE,
                "store.db is not a Tenthwise store. It was left as it is. Give the path of a store.");
        assertEquals(List.of(store), files());
    }

    @ParameterizedTest
    @EnumSource
    void anotherProgramsDatabaseIsNoStoreAndStaysAsItIs(Way way) throws IOException, SQLException {
        Sample.behindItsBack(store, "CREATE TABLE ledger (seq INTEGER PRIMARY KEY)", "PRAGMA user_version = 1");
        staysAsItIs(
                way,
                Reason.NOT_A_STORE,
                "store.db is not a Tenthwise store. It was left as it is. Give the path of a store.");
    }

    @ParameterizedTest
    @EnumSource
    void aStoreOfANewerReleaseStaysAsItIs(Way way) throws CouldNotOpen, CouldNotSave, IOException, SQLException {
        makeStoreAlone();
        Sample.behindItsBack(store, "PRAGMA user_version = 6");

        staysAsItIs(
                way,
                Reason.NEWER,
                "store.db was made by a newer release of Tenthwise (store version 6, this release knows 5). "
                        + "It was left as it is. Open it with the newer release.");
    }

    @ParameterizedTest
    @EnumSource
    void aDamagedStoreStaysAsItIs(Way way) throws CouldNotOpen, CouldNotSave, IOException {
        makeStoreAlone();
        byte[] damaged = Files.readAllBytes(store);
        Arrays.fill(damaged, 100, 4096, (byte) 0x5A); // all of the first page but the header of the file
        Files.write(store, damaged);

        staysAsItIs(
                way,
                Reason.DAMAGED,
                "store.db was not opened: it is damaged. It was left as it is. Recover its intact "
                        + "entries with the command \"salvage\", or go back to a backup with \"restore\".");
    }

    @Test
    void aPlaceThatTakesNoFilesIsNamedAsSuch() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        store = file.resolve("store.db");

        refused(
                Way.OR_MAKE,
                Reason.READ_ONLY,
                "store.db cannot be written to. It was left as it is. "
                        + "Allow writing to it and to its folder, or give another path.");
    }

    @Test
    void aStoreHalfMadeWhenThePowerWentIsMadeAnew() throws IOException, CouldNotOpen {
        Files.writeString(folder.resolve("store.db.new"), "half");

        new SqliteStores().open(store).close();

        assertEquals(List.of(store, folder.resolve("store.db.lock")), files());
    }

    @Test
    void twoInOneProcessCannotHoldOneStore() throws CouldNotOpen, CouldNotSave {
        try (Ledger first = new SqliteStores().open(store)) {
            Sample.begin(first, "run-1");

            String held = "store.db is in use by another Tenthwise. Nothing was written to it from here. "
                    + "Close the other one, then open it again.";
            refused(Way.EXISTING, Reason.HELD_BY_ANOTHER, held);
            refused(Way.OR_MAKE, Reason.HELD_BY_ANOTHER, held);
            assertEquals(2, Sample.read(first, "run-1", "35.010").seq());
        }
        new SqliteStores().openExisting(store).close();
    }

    @Test
    void oneStoreUnderTwoNamesIsStillHeld() throws CouldNotOpen, IOException {
        try (Ledger first = new SqliteStores().open(store)) {
            Path link = Files.createSymbolicLink(folder.resolve("link.db"), store);

            assertEquals(
                    Reason.HELD_BY_ANOTHER,
                    assertThrows(CouldNotOpen.class, () -> new SqliteStores().open(link))
                            .reason());
            assertEquals(0, first.head().seq());
        }
    }

    @Test
    void aSecondProcessIsToldSoAndWritesNothing() throws Exception {
        try (Ledger first = new SqliteStores().open(store)) {
            Sample.begin(first, "run-1");
            // a refusal in this process must not let go of the lock the other process is to meet
            assertThrows(CouldNotOpen.class, () -> new SqliteStores().open(store));

            try (AnotherProcess second = AnotherProcess.takingReadings(store, 1, folder)) {
                assertEquals("HELD_BY_ANOTHER", second.line());
            }
            assertEquals(1, first.head().seq());
            assertEquals(2, Sample.read(first, "run-1", "35.010").seq());
        }
    }

    @Test
    void theLockOfAKilledProcessIsGone() throws Exception {
        try (AnotherProcess holder = AnotherProcess.takingReadings(store, 1, folder)) {
            assertEquals("1 1.000000", holder.line());
            refused(
                    Way.EXISTING,
                    Reason.HELD_BY_ANOTHER,
                    "store.db is in use by another Tenthwise. "
                            + "Nothing was written to it from here. Close the other one, then open it again.");
            holder.kill();
        }
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void entriesGoToTheDiskBeforeTheyAreSaidToBeSaved() throws CouldNotOpen, CouldNotSave, IOException, SQLException {
        makeStoreAlone();
        try (Connection connection = Connections.toWrite(StoreFile.of(store).urlToWrite())) {
            assertEquals("truncate", Connections.answer(connection, "PRAGMA journal_mode"));
            assertEquals("2", Connections.answer(connection, "PRAGMA synchronous"));
            assertTrue(Connections.keepsSafely(connection));
            try (Statement statement = connection.createStatement()) {
                statement.executeUpdate("PRAGMA synchronous = NORMAL");
            }
            assertFalse(Connections.keepsSafely(connection));
        }
        try (Connection elsewhere = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            assertFalse(Connections.keepsSafely(elsewhere));
        }
    }

    private void makeStoreAlone() throws CouldNotOpen, CouldNotSave, IOException {
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
        }
        Files.delete(folder.resolve("store.db.lock"));
    }

    private void staysAsItIs(Way way, Reason reason, String sentence) throws IOException {
        byte[] before = Files.readAllBytes(store);
        refused(way, reason, sentence);
        assertArrayEquals(before, Files.readAllBytes(store));
        assertEquals(List.of(store), files());
    }

    private void refused(Way way, Reason reason, String sentence) {
        CouldNotOpen refusal =
                assertThrows(CouldNotOpen.class, () -> way.open(store).close());
        assertEquals(sentence, refusal.getMessage());
        assertEquals(reason, refusal.reason());
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
