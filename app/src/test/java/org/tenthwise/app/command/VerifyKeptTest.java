package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.store.sqlite.StoreOfBefore;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

class VerifyKeptTest {

    @TempDir
    private Path folder;

    private Path store;
    private Path record;

    @BeforeEach
    void walk() throws Exception {
        store = folder.resolve("s.db");
        Typed.line("walk", "LG-2207", "--readings", "LG-2207-fail", "--store", store, "--out", folder.resolve("out"));
        record = Typed.files(folder.resolve("out")).get(1);
    }

    private List<StoredEntry> entries() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.stored();
        }
    }

    @Test
    void aWholeStoreIsSaidToBeWhole() throws Exception {
        Typed typed = Typed.line("verify", store);
        assertEquals(0, typed.exit());
        StoredEntry last = entries().get(entries().size() - 1);
        assertEquals(
                "%s is intact: %d entries, the last with hash %s.".formatted(store, last.seq(), last.hash()),
                typed.out().get(0));
    }

    /** One byte of one body, in the file itself, as no trigger would let it be changed. */
    @Test
    void oneChangedByteNamesItsEntry() throws Exception {
        StoredEntry changed = entries().stream()
                .filter(entry -> entry.body().contains("70.02"))
                .findFirst()
                .orElseThrow();
        byte[] bytes = Files.readAllBytes(store);
        int at = new String(bytes, ISO_8859_1).indexOf(changed.body());
        assertTrue(at > 0);
        bytes[at + changed.body().indexOf("70.02") + 4] = '3';
        Files.write(store, bytes);
        Typed typed = Typed.line("verify", store);
        assertEquals(1, typed.exit());
        assertEquals(
                List.of("%s is not intact. Entry %d is not as it was written: its text does not give its hash."
                        .formatted(store, changed.seq())),
                typed.out());
    }

    @Test
    void aWholeRecordIsSaidToBeWholeWithTheRunHeadToCompare() throws Exception {
        Typed typed = Typed.line("verify", record);
        assertEquals(0, typed.exit());
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            RunHead head = kept.runHead("LG-2207-C-013");
            assertEquals(
                    ("Its run head is %s after %d entries. It is complete if the printed record has the same; --head "
                                    + "HASH compares them.")
                            .formatted(head.hash(), head.place()),
                    last(typed));
        }
    }

    @Test
    void aChangedRecordNamesItsEntry() throws Exception {
        StoredEntry changed = entries().stream()
                .filter(entry -> entry.body().contains("70.02"))
                .findFirst()
                .orElseThrow();
        String text = Files.readString(record);
        int at = text.indexOf("70.02", text.indexOf("\"seq\" : " + changed.seq()));
        Files.writeString(record, text.substring(0, at) + "70.03" + text.substring(at + 5));
        Typed typed = Typed.line("verify", record);
        assertEquals(1, typed.exit());
        assertTrue(typed.out().get(0).contains("Entry %d ".formatted(changed.seq())), typed.out()::toString);
    }

    /** Neither whole nor not whole: its entries prove themselves, what it says they come to is not looked at. */
    @Test
    void aRecordOfTheSecondFormIsSaidToBeAnOlderOne() throws Exception {
        StoredEntry last = entries().get(entries().size() - 1);
        String text = Files.readString(record).replace("\"tenthwise-record-3\"", "\"tenthwise-record-2\"");
        Files.writeString(record, text.replaceFirst("\"outcome\" : \"[a-z-]*\"", "\"outcome\" : \"conforms\""));
        Typed typed = Typed.line("verify", record);
        assertEquals(2, typed.exit());
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            RunHead head = kept.runHead("LG-2207-C-013");
            assertEquals(
                    List.of(
                            ("%s has an older form: every entry in it is as it was written, and none is missing "
                                            + "before the last: %d entries, the last with hash %s.")
                                    .formatted(record, head.place(), last.hash()),
                            "Its results were not compared with them. Export the run again from its store to have "
                                    + "that compared.",
                            typed.out().get(2), // by which key it is sealed
                            typed.out().get(3),
                            ("Its run head is %s after %d entries. It is complete if the printed record has the "
                                            + "same; --head HASH compares them.")
                                    .formatted(head.hash(), head.place())),
                    typed.out());
            assertEquals(2, Typed.line("verify", record, "--head", head.hash()).exit());
        }
        assertEquals(1, Typed.line("verify", record, "--head", "ab").exit());
        Files.writeString(record, text.replace("70.02", "70.03"));
        assertEquals(1, Typed.line("verify", record).exit());
    }

    @Test
    void whatIsNeitherStoreNorRecordIsSaidToBeNeither() throws Exception {
        Path other = Files.writeString(folder.resolve("other.json"), "{\"format\": \"else\"}");
        String said = "%s is no Tenthwise store, no bundle and no readable record in JSON. Give one of these.";
        assertEquals(said.formatted(other), Typed.line("verify", other).trouble());
        assertEquals(said.formatted(folder), Typed.line("verify", folder).trouble());
    }

    @Test
    void aFileLargerThanAnyRecordIsNotReadIntoMemory() throws Exception {
        Path large = folder.resolve("large.json");
        try (FileChannel channel = FileChannel.open(large, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(new byte[] {'}'}), 200L << 20);
        }
        assertEquals(
                "%s is larger than any record, so it was not read. Give a store, a bundle, or a record in JSON."
                        .formatted(large),
                Typed.line("verify", large).trouble());
    }

    @Test
    void aMissingFileIsSaidToBeMissing() {
        assertEquals(
                "There is no nowhere.db. Give a store, a bundle, or a record in JSON.",
                Typed.line("verify", "nowhere.db").trouble());
    }

    @Test
    void theHashOfAnyEntryIsFoundWithWhatStandsBehindIt() throws Exception {
        List<StoredEntry> entries = entries();
        StoredEntry last = entries.get(entries.size() - 1);
        assertHead(
                0,
                last.hash(),
                "The hash is that of entry %d: nothing up to it was cut off, and it is the last."
                        .formatted(last.seq()));
        assertHead(
                0,
                entries.get(4).hash().toUpperCase(Locale.ROOT),
                "The hash is that of entry 5: nothing up to it was cut off, and %d entries follow it."
                        .formatted(entries.size() - 5));
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            RunHead run = kept.runHead("LG-2207-C-013");
            String said =
                    ("The hash is that of run LG-2207-C-013 up to its entry %d: nothing of the run up to it was cut "
                                    + "off, and it is the last.")
                            .formatted(run.place());
            assertHead(0, run.hash(), said);
            assertEquals(said, last(Typed.line("verify", record, "--head", run.hash())));
        }
    }

    @Test
    void entriesCutOffAtTheEndAreFoundByTheHashThatWasPrinted() throws Exception {
        StoredEntry last = entries().get(entries().size() - 1);
        Sample.behindItsBack(
                store,
                "DROP TRIGGER ledger_is_never_shortened",
                "DELETE FROM ledger WHERE seq = " + last.seq(),
                "CREATE TRIGGER ledger_is_never_shortened BEFORE DELETE ON ledger\nBEGIN\n    SELECT RAISE(ABORT, "
                        + "'an entry of the ledger "
                        + "is never taken away');\nEND");
        assertEquals(0, Typed.line("verify", store).exit());
        assertHead(
                1,
                last.hash(),
                ("No entry in it has the hash %s: entries were cut off or changed since, or the hash is of another "
                                + "store.")
                        .formatted(last.hash()));
    }

    @Test
    void entriesOfANewerReleaseAreNamedAndAreNoFault() throws Exception {
        long last = entries().size();
        Sample.photograph(store, "LG-2207-C-013");
        Typed typed = Typed.line("verify", store);
        assertEquals(0, typed.exit());
        assertEquals(
                ("It has 1 entry of kinds this release does not know (photo-taken; entry %d): it was "
                                + "made by a newer release.")
                        .formatted(last + 1),
                typed.out().get(1));
        assertTrue(
                typed.out()
                        .get(2)
                        .startsWith("Time runs backwards once: entry %d, of 2026-03-02T06:15:00Z, comes after one of "
                                .formatted(last + 1)),
                typed.out()::toString);
    }

    /** Cut off or not, the file looks the same: nothing but a hash kept elsewhere can tell. */
    @Test
    void aStoreThatHadALogBesideItIsCalledWholeOnlyByAHashFromElsewhere() throws Exception {
        Path old = folder.resolve("old.db");
        try (StoreOfBefore before = StoreOfBefore.make(old)) {
            before.add("run-1", "35.010");
        }
        String hash;
        try (KeptEntries kept = new SqliteStores().openToRead(old)) {
            hash = kept.head().hash();
        }
        Typed typed = Typed.line("verify", old);
        assertEquals(1, typed.exit());
        assertEquals(
                List.of(
                        "%s: every entry in it is as it was written: one entry, the last with hash %s."
                                .formatted(old, hash),
                        "It was written by an earlier release, which put its last entries into a file beside "
                                + "it (old.db-wal). If it was copied without that file, entries are missing at "
                                + "its end, "
                                + "and the store cannot tell. Compare it with a printed record: --head HASH."),
                typed.out());
        assertEquals(0, Typed.line("verify", old, "--head", hash).exit());
        assertEquals(1, Typed.line("verify", old, "--head", "ab").exit());
    }

    private String key() throws Exception {
        return KeyFile.beside(store).open().shown().fingerprint();
    }

    @Test
    void withoutAKeyToTrustItIsSaidWhatASealProvesAndWhatNot() throws Exception {
        for (Path path : List.of(store, record)) {
            Typed typed = Typed.line("verify", path);
            assertEquals(0, typed.exit());
            assertEquals(
                    "One closed run is sealed with the key %s. Its whole fingerprint: %s"
                            .formatted(PublicKeyOfStation.shortened(key()), key()),
                    typed.out().get(1));
            assertEquals(
                    "A seal proves that what it seals was not changed since that key sealed it. Whose key it is, "
                            + "it does not prove: --trust KEY compares it with one you were given another way.",
                    typed.out().get(2));
        }
    }

    @Test
    void aSealByAKeyThatIsTrustedIsEnoughAndOneByAnotherIsNot() throws Exception {
        Path pem = Files.write(
                folder.resolve("station.pem"),
                KeyFile.beside(store).open().shown().pem());
        String other = new KeyFile(folder.resolve("other.p12")).make().shown().fingerprint();
        for (Path path : List.of(store, record)) {
            for (Object trust :
                    List.of(pem, key(), PublicKeyOfStation.inGroups(key()).toUpperCase(Locale.ROOT))) {
                Typed typed = Typed.line("verify", path, "--trust", trust, "--trust", other);
                assertEquals(0, typed.exit(), typed::toString);
                assertEquals(
                        "All that is closed is sealed with keys you trust.",
                        typed.out().get(2));
            }
            Typed typed = Typed.line("verify", path, "--trust", other);
            assertEquals(1, typed.exit());
            assertEquals(
                    "Not trusted: sealed with the key %s, which is none of those given.".formatted(key()),
                    typed.out().get(2));
        }
    }

    @Test
    void whatIsNoKeyCannotBeTrusted() throws Exception {
        Path text = Files.writeString(folder.resolve("note.txt"), "trust me");
        for (Object trust : List.of(text, folder, "ab".repeat(31), key().substring(0, 16), "nowhere.pem")) {
            assertEquals(
                    trust + " is neither a file with the public key of a station nor a whole fingerprint of 64 digits. "
                            + "\"key\" prints both.",
                    Typed.line("verify", store, "--trust", trust).trouble());
        }
    }

    @Test
    void runsOfAReleaseThatSealedNothingAreSaidNotToBeSealed() throws Exception {
        Path cut = folder.resolve("cut.db");
        try (Ledger ledger = new SqliteStores().open(cut)) {
            ledger.append(
                    "A",
                    OffsetDateTime.parse("2026-03-02T00:15:00+01:00"),
                    "Setter 1",
                    new Event.Closed("Setter 1", SignedAs.ACCEPTED));
        }
        Typed typed = Typed.line("verify", cut);
        assertEquals(0, typed.exit());
        assertEquals("One closed run is not sealed: A.", typed.out().get(1));
        assertEquals(1, Typed.line("verify", cut, "--trust", key()).exit());
    }

    @Test
    void whereNothingIsClosedNoKeyIsProven() throws Exception {
        Path empty = folder.resolve("empty.db");
        try (Ledger ledger = new SqliteStores().open(empty)) {
            ledger.append(
                    "A",
                    OffsetDateTime.parse("2026-03-02T00:15:00+01:00"),
                    "Setter 1",
                    new StepEvent.NoteMade(0, "first"));
        }
        Typed typed = Typed.line("verify", empty, "--trust", key());
        assertEquals(1, typed.exit());
        assertEquals("Nothing in it is sealed.", last(typed));
    }

    private void assertHead(int exit, String hash, String said) {
        Typed typed = Typed.line("verify", store, "--head", hash);
        assertEquals(said, last(typed));
        assertEquals(exit, typed.exit());
    }

    private static String last(Typed typed) {
        return typed.out().get(typed.out().size() - 1);
    }
}
