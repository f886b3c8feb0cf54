package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;

/** Opening looks behind the entry that was found to be well before; what lies before it is looked at meanwhile. */
class OpeningBehindAHeadTest {

    private final Stores stores = new SqliteStores();

    @TempDir
    private Path folder;

    private Path store;
    private Head checked;

    @BeforeEach
    void fill() throws Exception {
        store = folder.resolve("store.db");
        try (Ledger ledger = stores.open(store)) {
            Sample.begin(ledger, "run-1");
            Sample.begin(ledger, "run-2");
            Sample.read(ledger, "run-1", "35.010");
            checked = ledger.head();
            Sample.read(ledger, "run-2", "35.010");
            Sample.read(ledger, "run-1", "35.020");
            Sample.begin(ledger, "run-3");
            Sample.read(ledger, "run-3", "35.020");
        }
    }

    @Test
    void aWholeStoreOpensAndGoesOn() throws Exception {
        try (Ledger ledger = stores.open(store, checked)) {
            assertEquals(8, Sample.read(ledger, "run-2", "35.020").seq());
            assertEquals(new Head(8, ledger.head().hash()), stores.makeSure(store));
        }
    }

    @Test
    void anEntryBehindItThatWasChangedKeepsTheStoreShut() throws Exception {
        Sample.tamper(store, 5);
        assertTrue(assertThrows(CouldNotOpen.class, () -> stores.open(store, checked))
                .getMessage()
                .startsWith("store.db was not opened: it is not intact. Entry 5 is not as it was written"));
    }

    @Test
    void anEntryLeftOutOfARunBehindItKeepsTheStoreShut() throws Exception {
        Sample.behindItsBack(store, "DROP TRIGGER ledger_is_never_shortened", "DELETE FROM ledger WHERE seq = 7");
        assertThrows(CouldNotOpen.class, () -> stores.open(store, checked));
    }

    @Test
    void anEntryBeforeItThatWasChangedIsFoundMeanwhile() throws Exception {
        Sample.tamper(store, 2);
        try (Ledger ledger = stores.open(store, checked)) {
            assertEquals(7, ledger.head().seq());
            CouldNotOpen found = assertThrows(CouldNotOpen.class, () -> stores.makeSure(store));
            assertEquals(CouldNotOpen.Reason.DAMAGED, found.reason());
            assertEquals(
                    "store.db was closed: it is not intact. Entry 2 is not as it was written: its text does not give "
                            + "its hash. Nothing more is written to it. Recover its intact entries with the "
                            + "command \"salvage\", or go back to a backup with \"restore\".",
                    found.getMessage());
        }
    }

    @Test
    void nothingIsConcludedMeanwhileFromAnEntryThatWasChangedNorAddedToItsRun() throws Exception {
        Sample.change(store, "body = replace(body, '35.010', '35.018') WHERE seq = 3");
        try (Ledger ledger = stores.open(store, checked)) {
            assertEquals(
                    "Entry 3 is not as it was written: its text does not give its hash. Nothing is concluded from it, "
                            + "and nothing was changed. Verify the store.",
                    assertThrows(CouldNotRead.class, () -> ledger.entries("run-1"))
                            .getMessage());
            assertThrows(CouldNotRead.class, () -> Sample.read(ledger, "run-1", "35.010"));
            assertEquals(7, ledger.head().seq());
            assertEquals(2, ledger.entries("run-2").size());
            assertEquals(8, Sample.read(ledger, "run-2", "35.020").seq());
        }
    }

    @Test
    void norFromARunThatAnEntryIsHiddenFrom() throws Exception {
        Head last = stores.makeSure(store);
        Sample.change(store, "run = 'run-9' WHERE seq = 3");
        try (Ledger ledger = stores.open(store, last)) {
            assertEquals(
                    "Entry 5 is number 3 of run run-1, and 1 come before it. Nothing is concluded from it, and "
                            + "nothing was changed. Verify the store.",
                    assertThrows(CouldNotRead.class, () -> ledger.entries("run-1"))
                            .getMessage());
        }
    }

    @Test
    void aStoreWhoseListsMustBeDrawnFromAnEntryThatWasChangedStaysShutAndSaysWhy() throws Exception {
        Sample.tamper(store, 2);
        DrawnRowsOfFile.spoil(store);
        assertTrue(assertThrows(CouldNotOpen.class, () -> stores.open(store, checked))
                .getMessage()
                .startsWith("store.db was not opened: it is not intact. Entry 2 is not as it was written"));
        Sample.change(store, "body = rtrim(body) WHERE seq = 2");
        stores.open(store, checked).close();
    }

    @Test
    void aHeadThatIsNotInTheStoreSavesNothing() throws Exception {
        Sample.tamper(store, 2);
        for (Head other : new Head[] {Head.OF_NOTHING, new Head(3, "ab".repeat(32)), new Head(99, checked.hash())}) {
            assertThrows(CouldNotOpen.class, () -> stores.open(store, other), other.toString());
        }
    }
}
