package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.StationElsewhere;
import org.tenthwise.app.store.StoredEntry;

/** The file of a store that runs of others came into: what proves them, copies them and gets them out of damage. */
class ImportedStoreTest {

    private static final String FIRST = "LG-2207-C-013@aa11bb22";
    private static final String SECOND = "LG-2207-C-013@cc33dd44";

    private final SqliteStores stores = new SqliteStores();

    @TempDir
    private Path folder;

    private StationElsewhere lathe;
    private StationElsewhere mill;
    private Path store;
    private Head head;

    @BeforeEach
    void takeRunsOfTwoStationsIn() throws Exception {
        lathe = new StationElsewhere(folder.resolve("lathe.db"), "aa11bb22");
        mill = new StationElsewhere(folder.resolve("mill.db"), "cc33dd44");
        lathe.make("LG-2207-C-013");
        mill.begin("other");
        mill.make("LG-2207-C-013");
        store = folder.resolve("desk.db");
        try (Ledger desk = stores.open(store)) {
            Sample.begin(desk, "own");
            takeIn(desk, lathe.bundle("LG-2207-C-013"));
            takeIn(desk, mill.bundle("LG-2207-C-013"));
            Sample.read(desk, "own", "35.010");
            head = desk.head();
        }
    }

    @AfterEach
    void letGo() {
        lathe.close();
        mill.close();
    }

    @Test
    void openedAgainAllOfItIsThere() throws Exception {
        try (KeptEntries kept = stores.openToRead(store)) {
            assertEquals(Optional.empty(), kept.verify().fault());
            assertEquals(List.of("own", FIRST, SECOND), kept.runs());
            assertEquals(lathe.ledger().stored("LG-2207-C-013"), kept.stored(FIRST));
        }
        stores.open(store).close();
        stores.open(store, head).close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE imported SET body = replace(body, '0', '1') WHERE rowid_of(7)",
                "UPDATE imported SET hash = previous WHERE rowid_of(9)",
                "UPDATE imported SET run = 'x' WHERE rowid_of(4)",
                "UPDATE imported SET \"by\" = 'B. Fitter' WHERE rowid_of(4)",
                "UPDATE imported SET seq = seq + 1000 WHERE rowid_of(70)",
                "DELETE FROM imported WHERE rowid_of(5)",
                "DELETE FROM imported WHERE run = 'LG-2207-C-013'",
                "DELETE FROM imported WHERE seq > 20",
                "UPDATE imported_from SET sign = 'ffffffff' WHERE sign = 'aa11bb22'",
                "UPDATE imported_from SET \"key\" = store WHERE sign = 'aa11bb22'",
                "UPDATE imported SET station = 1 WHERE station = 2",
                "INSERT INTO imported SELECT station, seq + 5000, 'y', kind, at, 'x', body, hash, hash FROM imported",
                "INSERT INTO imported SELECT station, seq + 5000, run, kind, at, 'x', body, hash, hash FROM imported"
            })
    void whateverIsChangedBehindItsBackIsFound(String statement) throws Exception {
        behindItsBack(statement.replaceAll("rowid_of\\((\\d+)\\)", "station = 2 AND seq = $1"));

        try (KeptEntries kept = stores.openToRead(store)) {
            assertFalse(kept.verify().whole());
        }
        assertThrows(CouldNotOpen.class, () -> stores.open(store));
        assertThrows(CouldNotOpen.class, () -> stores.makeSure(store));
    }

    @Test
    void aByteThatWasChangedIsNamedWithItsRunAndEntry() throws Exception {
        behindItsBack("UPDATE imported SET body = body || ' ' WHERE station = 2 AND seq = 7");
        try (KeptEntries kept = stores.openToRead(store)) {
            assertEquals(
                    "Run LG-2207-C-013@aa11bb22, which came in from another store, is not as it came: "
                            + "Entry 7 is not as it was written: its text does not give its hash.",
                    kept.verify().fault().orElseThrow().why().toString());
            assertThrows(CouldNotRead.class, () -> kept.entries(FIRST), "nothing is concluded from it");
            assertEquals(mill.ledger().entries("LG-2207-C-013"), kept.entries(SECOND));
        }
    }

    @Test
    void whateverByteOfTheFileIsChangedNoRunThatIsAnotherPassesForWhole() throws Exception {
        byte[] file = Files.readAllBytes(store);
        byte[] body = lathe.ledger().stored("LG-2207-C-013").get(5).body().getBytes(UTF_8);
        Random random = new Random(20261201);
        int noticed = 0;
        for (int i = 0; i < 200; i++) {
            byte[] changed = file.clone();
            int at = random.nextInt(file.length);
            changed[at] ^= (byte) (1 + random.nextInt(255));
            Files.write(store, changed);
            try (KeptEntries kept = stores.openToRead(store)) {
                if (kept.verify().whole()) {
                    assertEquals(lathe.ledger().stored("LG-2207-C-013"), kept.stored(FIRST));
                    assertEquals(mill.ledger().stored("LG-2207-C-013"), kept.stored(SECOND));
                } else {
                    noticed++;
                }
            } catch (CouldNotOpen | CouldNotRead e) {
                noticed++;
            }
        }
        assertTrue(noticed > 100, "Only %d changes were noticed, of %d bytes".formatted(noticed, body.length));
    }

    @Test
    void nothingIsAddedToARunThatCameIn() throws Exception {
        try (Ledger desk = stores.open(store)) {
            CouldNotSave refusal = assertThrows(CouldNotSave.class, () -> Sample.note(desk, FIRST));
            assertEquals(CouldNotSave.Reason.IMPORTED, refusal.reason());
            assertEquals(
                    "The entry was not saved: run LG-2207-C-013@aa11bb22 was made in another store and came in from "
                            + "there. It is only looked at here; what is to be added to it is entered where it "
                            + "was made.",
                    refusal.getMessage());
            assertEquals(head, desk.head());
            assertTrue(desk.verify().whole());
        }
    }

    @Test
    void theTablesTakeNothingBack() {
        for (String statement : List.of(
                "UPDATE imported SET at = '' WHERE seq = 3",
                "DELETE FROM imported WHERE seq = 3",
                "INSERT OR REPLACE INTO imported SELECT station, seq, run, kind, at, 'x', '', '', hash FROM imported",
                "INSERT INTO imported VALUES (77, 1, 'x', 'x', 'x', 'x', 'x', 'x', 'x')",
                "UPDATE imported_from SET store = ''",
                "DELETE FROM imported_from",
                "INSERT OR REPLACE INTO imported_from SELECT station, sign, '', '' FROM imported_from")) {
            assertThrows(SQLException.class, () -> Sample.behindItsBack(store, statement), statement);
        }
    }

    @Test
    void aBackupAndWhatIsPutBackFromItHoldThemAsWell() throws Exception {
        Path backup = folder.resolve("backup.db");
        stores.copy(store, backup);
        try (KeptEntries kept = stores.openToRead(backup)) {
            assertEquals(Optional.empty(), kept.verify().fault());
            assertEquals(lathe.ledger().stored("LG-2207-C-013"), kept.stored(FIRST));
            assertEquals(mill.ledger().stored("LG-2207-C-013"), kept.stored(SECOND));
        }
        Path back = folder.resolve("back.db");
        stores.copy(backup, back);
        try (Ledger desk = stores.open(back)) {
            assertFalse(takeIn(desk, lathe.bundle("LG-2207-C-013")));
        }
    }

    @Test
    void ofADamagedStoreTheRunsThatAreAsTheyCameGoAlongAndTheOthersComeInAgainFromTheirFile() throws Exception {
        behindItsBack("UPDATE imported SET body = body || ' ' WHERE station = 2 AND seq = 7");
        Path rescued = folder.resolve("rescued.db");

        Salvage made = stores.salvage(store, rescued);

        assertTrue(made.fault().isPresent());
        assertEquals(
                List.of(true, false),
                made.runs().stream()
                        .filter(run -> run.run().contains("@"))
                        .map(run -> run.kept() > 0)
                        .sorted((a, b) -> Boolean.compare(b, a))
                        .toList());
        try (Ledger desk = stores.open(rescued)) {
            assertEquals(Optional.empty(), desk.verify().fault());
            assertEquals(List.of("own", SECOND), desk.runs());
            assertEquals(2, desk.entries("own").size(), "what was done here behind the damage is here");
            assertTrue(takeIn(desk, lathe.bundle("LG-2207-C-013")));
            assertEquals(lathe.ledger().stored("LG-2207-C-013"), desk.stored(FIRST));
            assertEquals(Optional.empty(), desk.verify().fault());
        }
    }

    @Test
    void behindADamagedEntryOfTheLedgerNothingThatCameInGoesAlong() throws Exception {
        Sample.tamper(store, 3);
        Path rescued = folder.resolve("rescued.db");

        Salvage made = stores.salvage(store, rescued);

        assertEquals(2, made.head().seq());
        try (Ledger desk = stores.open(rescued)) {
            assertEquals(List.of("own", FIRST), desk.runs());
            assertTrue(takeIn(desk, mill.bundle("LG-2207-C-013")));
            assertEquals(List.of("own", FIRST, SECOND), desk.runs());
            assertEquals(Optional.empty(), desk.verify().fault());
        }
    }

    @Test
    void anImportBrokenOffHalfWayLeavesNothing() throws Exception {
        lathe.make("LG-2207-C-014");
        Sample.behindItsBack(
                store,
                "CREATE TRIGGER stop BEFORE INSERT ON imported WHEN NEW.seq % 50 = 49 "
                        + "BEGIN SELECT RAISE(ABORT, 'x'); END");
        List<StoredEntry> before;
        try (KeptEntries kept = stores.openToRead(store)) {
            before = kept.stored();
        }
        try (SqliteLedger desk = Opening.of(StoreFile.of(store))) {
            assertThrows(CouldNotSave.class, () -> takeIn(desk, lathe.bundle("LG-2207-C-014")));
            assertEquals(before, desk.stored());
            assertEquals(List.of("own", FIRST, SECOND), desk.runs());
        }
        Sample.behindItsBack(store, "DROP TRIGGER stop");
        try (Ledger desk = stores.open(store)) {
            assertTrue(takeIn(desk, lathe.bundle("LG-2207-C-014")));
        }
    }

    @Test
    void aStoreOfTheReleaseBeforeIsReadAndTakesThemInOnceItIsOpened() throws Exception {
        Path old = folder.resolve("old.db");
        try (Ledger ledger = stores.open(old)) {
            Sample.begin(ledger, "own");
        }
        Sample.behindItsBack(old, "DROP TABLE imported", "DROP TABLE imported_from", "PRAGMA user_version = 4");
        try (KeptEntries kept = stores.openToRead(old)) {
            assertTrue(kept.verify().whole());
            assertEquals(List.of("own"), kept.runs());
            assertEquals(List.of(), kept.origins());
            assertEquals(List.of("own"), kept.history().unjudged());
            assertEquals(List.of(), kept.entries(FIRST));
        }
        try (Ledger ledger = stores.open(old)) {
            assertTrue(takeIn(ledger, lathe.bundle("LG-2207-C-013")));
        }
    }

    private static boolean takeIn(Ledger desk, Incoming incoming) throws Exception {
        return desk.takeIn(incoming, StationElsewhere.AT, "Inspector 1").addAnything();
    }

    /** Past the triggers, which are put back as they were. */
    private void behindItsBack(String statement) throws SQLException {
        List<String> triggers = DrawnRowsOfFile.texts(
                store, "SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND tbl_name LIKE 'imported%'");
        List<String> names = DrawnRowsOfFile.texts(
                store, "SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name LIKE 'imported%'");
        for (String name : names) {
            Sample.behindItsBack(store, "DROP TRIGGER " + name);
        }
        Sample.behindItsBack(store, statement);
        for (String trigger : triggers) {
            Sample.behindItsBack(store, trigger);
        }
    }
}
