package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Verification;

class SchemaCheckTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void makeAStore() throws Exception {
        store = folder.resolve("store.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # statement                                                                            | what verify and
        # opening say
        DROP TRIGGER ledger_is_never_changed                                                   | The trigger ledger_is_never_changed is missing.
        DROP INDEX ledger_of_run                                                               | The index ledger_of_run is missing.
        CREATE TRIGGER zz BEFORE INSERT ON ledger BEGIN SELECT RAISE(IGNORE); END              | The trigger zz was not made by Tenthwise.
        CREATE TABLE notes (words TEXT)                                                        | The table notes was not made by Tenthwise.
        CREATE VIEW readings AS SELECT * FROM ledger                                           | The view readings was not made by Tenthwise.
        CREATE INDEX ledger_by_kind ON ledger (kind)                                           | The index ledger_by_kind was not made by Tenthwise.
        ALTER TABLE ledger ADD COLUMN approved TEXT                                            | The table ledger is not as Tenthwise makes it.
        """)
    void whatIsNotAsItWasMadeIsNamedAndNotWrittenTo(String statement, String said) throws Exception {
        Sample.behindItsBack(store, statement);
        byte[] before = Files.readAllBytes(store);

        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(Optional.of(said), kept.verify().fault().map(fault -> fault.why()
                    .toString()));
        }
        CouldNotOpen refusal = assertThrows(CouldNotOpen.class, () -> new SqliteStores().open(store));
        assertEquals(
                "store.db was not opened: it is not intact. " + said
                        + " It was left as it is. Recover its intact entries with the command \"salvage\", or "
                        + "go back to a backup with \"restore\".",
                refusal.getMessage());
        assertArrayEquals(before, Files.readAllBytes(store));
    }

    @Test
    void allThatDiffersIsNamedAndTheEntriesComeFirst() throws Exception {
        Sample.behindItsBack(
                store,
                "DROP TRIGGER ledger_is_never_changed",
                "UPDATE ledger SET \"by\" = 'B'",
                "CREATE TABLE \"a\nb\" (x)");

        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Verification found = kept.verify();
            assertEquals(
                    "The \"by\" of entry 1 is not what its text says.",
                    found.fault().orElseThrow().why().toString());
            assertEquals(
                    List.of("The trigger ledger_is_never_changed is missing. The table a?b was not made by Tenthwise."),
                    found.remarks().stream().map(Object::toString).toList());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CREATE TRIGGER zz BEFORE INSERT ON ledger WHEN NEW.kind = 'reading-taken' BEGIN SELECT "
                        + "RAISE(IGNORE); END",
                "CREATE TRIGGER zz AFTER INSERT ON ledger WHEN NEW.kind = 'reading-taken' BEGIN INSERT INTO ledger "
                        + "SELECT NEW.seq + 1, run, "
                        + "'x', at, \"by\", body, previous, hash FROM ledger WHERE seq = NEW.seq; END"
            })
    void anEntryTheStoreDidNotKeepAsGivenIsNotSaidToBeSaved(String trigger) throws Exception {
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            Sample.behindItsBack(store, trigger);

            CouldNotSave refusal = assertThrows(CouldNotSave.class, () -> Sample.read(ledger, "run-1", "35.010"));

            assertEquals(
                    "The entry was not saved: store.db did not store it as given. Do not continue with "
                            + "it. Keep a copy of the file, verify it, and start a new store.",
                    refusal.getMessage());
            assertEquals(CouldNotSave.Reason.DAMAGED, refusal.reason());
            assertEquals(1, ledger.head().seq());
            Sample.behindItsBack(store, "DROP TRIGGER zz");
            assertEquals(2, Sample.read(ledger, "run-1", "35.010").seq());
            assertTrue(ledger.verify().whole());
        }
    }
}
