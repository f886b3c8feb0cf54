package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;

class BackupCommandsTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void walk() {
        store = folder.resolve("s.db");
        Typed.line("walk", "LG-2207", "--readings", "LG-2207-pass", "--store", store, "--out", folder.resolve("out"));
    }

    @Test
    void aStoreThatIsLostComesBackToItsLastEntryOnABareMachine() throws Exception {
        Path backup = folder.resolve("stick").resolve("s-backup.db");
        Head head = head(store);
        Typed made = Typed.line("backup", "--store", store, "--to", backup);
        assertEquals(
                List.of("%s is on the disk and intact: %d entries, the last with hash %s."
                        .formatted(backup, head.seq(), head.hash())),
                made.out());
        Files.delete(store);

        Path restored = folder.resolve("another").resolve("machine.db");
        Typed typed = Typed.line("restore", backup, "--store", restored);

        assertEquals(0, typed.exit());
        assertEquals(
                List.of("%s is as it was when %s was made: %d entries, the last with hash %s."
                        .formatted(restored, backup, head.seq(), head.hash())),
                typed.out());
        assertEquals(head, head(restored));
        try (Ledger ledger = new SqliteStores().open(restored)) {
            assertEquals(1, ledger.runs().size());
            assertTrue(ledger.verify().whole());
        }
    }

    @Test
    void aStoreIsBackedUpWhileItIsOpenAndWrittenTo() throws Exception {
        Path backup = folder.resolve("b.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            assertEquals(
                    0, Typed.line("backup", "--store", store, "--to", backup).exit());
            assertEquals(ledger.head(), head(backup));
        }
    }

    @Test
    void nothingIsEverWrittenOverAFile() throws Exception {
        Path there = folder.resolve("there.db");
        Files.writeString(there, "mine");
        String refusal = "There is already a file %s. It was left as it is and nothing was copied. Give another name."
                .formatted(there);
        assertEquals(
                refusal, Typed.line("backup", "--store", store, "--to", there).trouble());
        assertEquals(refusal, Typed.line("restore", store, "--store", there).trouble());
        assertEquals(refusal, Typed.line("salvage", store, "--store", there).trouble());
        assertEquals("mine", Files.readString(there));
    }

    @Test
    void aStoreThatIsNotWholeIsNotPassedOnAsABackup() throws Exception {
        Sample.tamper(store, 5);
        byte[] before = Files.readAllBytes(store);
        Path backup = folder.resolve("b.db");
        assertEquals(
                "s.db was not copied: it is not intact. Entry 5 is not as it was written: its text does not give its "
                        + "hash. It was left as it is. Its intact entries can be recovered with the command "
                        + "\"salvage\".",
                Typed.line("backup", "--store", store, "--to", backup).trouble());
        assertTrue(Files.notExists(backup));
        assertArrayEquals(before, Files.readAllBytes(store));
    }

    @Test
    void aDamagedStoreGivesUpWhatStillChains() throws Exception {
        Typed.line("walk", "WB-118", "--readings", "WB-118-pass", "--store", store, "--out", folder.resolve("out"));
        List<StoredEntry> second;
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            second = kept.stored(kept.runs().get(1));
        }
        long bad = second.get(2).seq();
        Sample.tamper(store, bad);
        byte[] before = Files.readAllBytes(store);
        Path rescued = folder.resolve("rescued.db");

        Typed typed = Typed.line("salvage", store, "--store", rescued);

        assertEquals(1, typed.exit());
        assertEquals(
                "%s is not intact. Entry %d is not as it was written: its text does not give its hash."
                        .formatted(store, bad),
                typed.out().get(0));
        assertEquals(
                "%s has %d entries, the last with hash %s."
                        .formatted(rescued, bad - 1, head(rescued).hash()),
                typed.out().get(1));
        assertTrue(
                typed.out().get(2).matches("Run LG-2207-.*: \\d+ entries\\."),
                typed.out().get(2));
        assertEquals(
                ("Run %s: 2 entries. After the damage %d entries of it are as written and were not taken over. "
                                + "Entries between them are missing or changed.")
                        .formatted(second.get(0).run(), second.size() - 3),
                typed.out().get(3));
        try (Ledger ledger = new SqliteStores().open(rescued)) {
            assertTrue(ledger.verify().whole());
            Sample.note(ledger, ledger.runs().get(0));
            assertEquals(bad, ledger.head().seq());
        }
        assertArrayEquals(before, Files.readAllBytes(store));
    }

    @Test
    void ofAStoreThatIsWholeAllIsTakenOver() throws Exception {
        Path rescued = folder.resolve("rescued.db");
        assertEquals(0, Typed.line("salvage", store, "--store", rescued).exit());
        assertEquals(head(store), head(rescued));
    }

    private static Head head(Path store) throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.head();
        }
    }
}
