package org.tenthwise.app.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seals;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

class SealingLedgerTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T00:15:00.5+01:00");
    private static final Event CLOSED = new Event.Closed("Inspector 1", SignedAs.ACCEPTED);
    private static final Event NOTE = new StepEvent.NoteMade(0, "put away");

    @TempDir
    private Path folder;

    private final Stores stores = new SealedStores(new SqliteStores());
    private Path store;

    @BeforeEach
    void name() {
        store = folder.resolve("shop.db");
    }

    private static Entry add(Ledger ledger, String run, Event event) throws Exception {
        return ledger.append(run, AT, "Setter 1", event);
    }

    private List<String> kinds(String run) throws Exception {
        try (KeptEntries kept = stores.openToRead(store)) {
            return kept.stored(run).stream().map(entry -> entry.kind()).toList();
        }
    }

    private Verification verified() throws Exception {
        try (KeptEntries kept = stores.openToRead(store)) {
            return kept.verify();
        }
    }

    private String key() throws Exception {
        return KeyFile.beside(store).open().shown().fingerprint();
    }

    @Test
    void aRunIsSealedWhenItIsClosedAndAgainWithWhatIsAddedThen() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", NOTE);
            add(ledger, "B", NOTE);
            add(ledger, "A", CLOSED);
            add(ledger, "B", NOTE);
            add(ledger, "A", NOTE);
        }
        assertEquals(List.of("note-made", "closed", "sealed", "note-made", "sealed"), kinds("A"));
        assertEquals(List.of("note-made", "note-made"), kinds("B"));
        assertEquals(
                new Seals(Map.of(key(), List.of("A")), List.of(), Set.of(key())),
                verified().seals());
        assertTrue(verified().whole());
    }

    @Test
    void anotherKeyCountsFromTheNextRunThatIsClosed() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", CLOSED);
            String before = key();
            KeyFile.beside(store).renew();
            add(ledger, "B", CLOSED);
            assertEquals(
                    new Seals(Map.of(before, List.of("A"), key(), List.of("B")), List.of(), Set.of(before, key())),
                    verified().seals());
        }
    }

    @Test
    void aKeyThatIsTakenAwayMeanwhileGoesOnUntilTheStoreIsShut() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            String before = key();
            Files.delete(KeyFile.beside(store).path());
            add(ledger, "A", CLOSED);
            assertEquals(Map.of(before, List.of("A")), verified().seals().runs());
        }
    }

    @Test
    void whoAddsAnEntryGetsThatOneBackAndNoSeal() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            assertEquals(CLOSED, add(ledger, "A", CLOSED).event());
            assertEquals(
                    List.of(NOTE, NOTE),
                    ledger.append("A", AT, "Setter 1", List.of(NOTE, NOTE)).stream()
                            .map(Entry::event)
                            .toList());
        }
    }

    @Test
    void aSealHasTheHeadOfItsRunAndTheKeyOfItsStation() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", NOTE);
            add(ledger, "A", CLOSED);
        }
        try (KeptEntries kept = stores.openToRead(store)) {
            RunHead head = RunHead.OF_NOTHING
                    .and(kept.stored("A").get(0))
                    .and(kept.stored("A").get(1));
            Event.Sealed seal =
                    kept.entries("A").get(2).event().as(Event.Sealed.class).orElseThrow();
            assertEquals(2, seal.place());
            assertEquals(head.hash(), seal.head());
            assertEquals(key(), seal.fingerprint());
        }
    }

    /** As where a setting is struck out in every run it was used in. */
    @Test
    void whatIsAddedToSeveralRunsAtOnceSealsThoseThatAreClosed() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", CLOSED);
            add(ledger, "B", NOTE);
            add(ledger, "C", CLOSED);
        }
        try (Ledger ledger = stores.open(store)) {
            ledger.append(List.of(
                    new NewEntry("A", AT, "Setter 1", NOTE),
                    new NewEntry("B", AT, "Setter 1", NOTE),
                    new NewEntry("C", AT, "Setter 1", NOTE),
                    new NewEntry("A", AT, "Setter 1", NOTE)));
        }
        assertEquals(List.of("closed", "sealed", "note-made", "note-made", "sealed"), kinds("A"));
        assertEquals(List.of("note-made", "note-made"), kinds("B"));
        assertEquals(List.of("closed", "sealed", "note-made", "sealed"), kinds("C"));
        assertTrue(verified().whole());
    }

    @Test
    void aStoreOfAReleaseThatSealedNothingOpensAndItIsSaidOfItsRuns() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store)) {
            add(ledger, "A", CLOSED);
        }
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "B", CLOSED);
        }
        assertTrue(verified().whole());
        assertEquals(
                new Seals(Map.of(key(), List.of("B")), List.of("A"), Set.of(key())),
                verified().seals());
    }

    @Test
    void aKeyThatIsMissingIsNotReplacedByItself() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", CLOSED);
        }
        Path key = KeyFile.beside(store).path();
        Path elsewhere = Files.move(key, folder.resolve("elsewhere.p12"));
        try (Ledger ledger = stores.open(store)) {
            assertEquals("key.missing", stores.unsealed(store).orElseThrow().key());
            add(ledger, "B", CLOSED);
        }
        assertFalse(Files.exists(key));
        assertEquals(List.of("B"), verified().seals().unsigned());
        Files.move(elsewhere, key);
        try (Ledger ledger = stores.open(store)) {
            assertEquals(Optional.empty(), stores.unsealed(store));
            add(ledger, "B", NOTE);
        }
        assertEquals(List.of(), verified().seals().unsigned());
    }

    @Test
    void aKeyThatIsDamagedIsLeftAsItIsAndSaid() throws Exception {
        Path key = Files.writeString(KeyFile.beside(store).path(), "mine");
        try (Ledger ledger = stores.open(store)) {
            assertEquals("key.damaged", stores.unsealed(store).orElseThrow().key());
            add(ledger, "A", CLOSED);
        }
        assertEquals("mine", Files.readString(key));
        assertEquals(List.of("closed"), kinds("A"));
    }

    @Test
    void aCopyOfTheStoreHasNoKey() throws Exception {
        try (Ledger ledger = stores.open(store)) {
            add(ledger, "A", CLOSED);
        }
        Path copy = folder.resolve("copies").resolve("shop.db");
        stores.copy(store, copy);
        assertFalse(KeyFile.beside(copy).isThere());
        try (Ledger ledger = stores.open(copy)) {
            assertTrue(ledger.isSealed());
        }
        assertFalse(KeyFile.beside(copy).isThere());
    }
}
