package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/** A store with entries of a kind this release does not know, tied together as they should be. */
class NewerEntriesTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void makeAStoreOfTheNextRelease() throws Exception {
        store = folder.resolve("store.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
            Sample.begin(ledger, "run-2");
        }
        Sample.photograph(store, "run-1");
        Sample.photograph(store, "run-1");
    }

    @Test
    void nothingIsAddedToTheRunAndOtherRunsGoOn() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            CouldNotSave refusal = assertThrows(CouldNotSave.class, () -> Sample.read(ledger, "run-1", "35.010"));
            assertEquals(
                    "The entry was not saved: run run-1 has entries from a newer release of Tenthwise. It "
                            + "was left as it is. Continue it in the newer release.",
                    refusal.getMessage());
            assertEquals(CouldNotSave.Reason.NEWER, refusal.reason());
            assertEquals(4, ledger.head().seq());

            assertEquals(5, Sample.read(ledger, "run-2", "35.010").seq());
            assertEquals(6, Sample.begin(ledger, "run-3").seq());
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void ofEntriesAddedAtOnceNoneIsWhereOneGoesToSuchARun() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            assertThrows(
                    CouldNotSave.class,
                    () -> ledger.append(List.of(
                            new NewEntry("run-2", Sample.AT, "A. Turner", Sample.reading("35.010")),
                            new NewEntry("run-1", Sample.AT, "A. Turner", Sample.reading("35.020")))));
            assertEquals(4, ledger.head().seq());
        }
    }

    @Test
    void anEntryOfAKnownKindThatTakesANewerFormatIsNotReadByHalf() throws Exception {
        Sample.noteOfANewerFormat(store, "run-2", "\"event\":{\"step\":3,\"words\":\"\",\"mood\":\"glad\"}}");
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(Optional.empty(), kept.verify().fault());
            assertEquals(
                    new Event.Unknown("note-made", "{\"step\":3,\"words\":\"\",\"mood\":\"glad\"}"),
                    kept.entries("run-2").get(1).event());
            assertEquals(List.of(5L), kept.verify().unknown().get("note-made"));
        }
        try (Ledger ledger = new SqliteStores().open(store)) {
            assertThrows(CouldNotSave.class, () -> Sample.read(ledger, "run-2", "35.010"));
        }
    }

    @Test
    void itIsReadAndItsEntriesAreShownForWhatTheyAre() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Verification found = kept.verify();
            assertEquals(Optional.empty(), found.fault());
            assertEquals(Map.of("photo-taken", List.of(3L, 4L)), found.unknown());
            assertEquals(3, kept.runHead("run-1").place());
            Run run = new Run(kept.entries("run-1"));
            assertEquals(
                    List.of(
                            new Event.Unknown("photo-taken", "{\"of\":\"step 3\"}"),
                            new Event.Unknown("photo-taken", "{\"of\":\"step 3\"}")),
                    run.unknown().stream().map(entry -> entry.event()).toList());
            assertTrue(new Run(kept.entries("run-2")).unknown().isEmpty());
        }
    }

    @Test
    void oneThatWasChangedIsDamagedAndNotNewer() throws Exception {
        byte[] file = Files.readAllBytes(store);
        String text = new String(file, ISO_8859_1);
        for (int at = text.indexOf("step 3\"}"); at >= 0; at = text.indexOf("step 3\"}", at + 1)) {
            file[at + 5] = '4';
        }
        Files.write(store, file);
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(
                    "Entry 3 is not as it was written: its text does not give its hash.",
                    kept.verify().fault().orElseThrow().why().toString());
        }
        assertEquals(
                CouldNotOpen.Reason.DAMAGED,
                assertThrows(CouldNotOpen.class, () -> new SqliteStores().open(store))
                        .reason());
    }
}
