package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.seal.SealedStores;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;

/** What is to be known of a run before what it came to. */
class RunProofTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");

    @TempDir
    private Path folder;

    private Path store() {
        return folder.resolve("shop.db");
    }

    private RunProof proof() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store())) {
            return RunProof.of(kept, "A");
        }
    }

    private void close(Ledger ledger) throws Exception {
        Sample.begin(ledger, "A");
        ledger.append("A", AT, "Setter 1", new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
    }

    @Test
    void aRunClosedWithTheKeyOfItsStationIsAsItWasWritten() throws Exception {
        try (Ledger ledger = new SealedStores(new SqliteStores()).open(store())) {
            Sample.begin(ledger, "B");
            close(ledger);
        }
        assertEquals(new RunProof(Optional.empty(), false), proof());
    }

    @Test
    void aRunThatIsOpenNeedsNoSealAndOneClosedWithoutIsNotSealed() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store())) {
            Sample.begin(ledger, "A");
            assertEquals(false, RunProof.of(ledger, "A").isUnsealed());
            ledger.append("A", AT, "Setter 1", new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
            assertEquals(true, RunProof.of(ledger, "A").isUnsealed());
        }
    }

    /** A seal of another run, which its chain takes in as it stands. */
    @Test
    void aSealThatIsOfSomethingElseIsNamed() throws Exception {
        try (Ledger sealed = new SealedStores(new SqliteStores()).open(folder.resolve("other.db"));
                Ledger ledger = new SqliteStores().open(store())) {
            close(sealed);
            Event seal = sealed.entries("A").get(2).event();
            close(ledger);
            Sample.note(ledger, "A");
            ledger.append("A", AT, "Setter 1", seal);
        }
        RunProof found = proof();
        assertTrue(found.fault().orElseThrow().key().startsWith("fault.seal"), found::toString);
    }

    @Test
    void anEntryThatWasChangedIsNamed() throws Exception {
        try (Ledger ledger = new SqliteStores().open(store())) {
            close(ledger);
        }
        Sample.tamper(store(), 1);
        assertEquals("fault.hash", proof().fault().orElseThrow().key());
    }
}
