package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** A seal is good behind the very head it was made for, by the very key it names, and nowhere else. */
class SealTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T00:15:00.5+01:00");

    @TempDir
    private Path folder;

    private StationKey key;
    private StationKey another;
    private final List<StoredEntry> chain = new ArrayList<>();
    private RunHead head = RunHead.OF_NOTHING;

    @BeforeEach
    void run() throws Exception {
        key = new KeyFile(folder.resolve("a.p12")).make();
        another = new KeyFile(folder.resolve("b.p12")).make();
        add(new StepEvent.NoteMade(0, "first"));
        add(new Event.Closed("Inspector 1", SignedAs.ACCEPTED));
    }

    private void add(Event event) {
        Head end =
                chain.isEmpty() ? Head.OF_NOTHING : chain.get(chain.size() - 1).asHead();
        StoredEntry stored = StoredEntry.behind(end, head, new NewEntry("A", AT, "Setter 1", event));
        chain.add(stored);
        head = head.and(stored);
    }

    private Optional<String> fault(Event seal) {
        add(seal);
        ChainCheck check = new ChainCheck();
        chain.forEach(entry -> check.next(ChainCheck.look(entry, entry.body().getBytes(UTF_8))));
        return check.result().fault().map(fault -> {
            assertEquals(Optional.of(3L), fault.seq());
            return fault.why().key();
        });
    }

    private Event.Sealed seal() {
        return Seal.by(key, "A", head, AT);
    }

    @Test
    void aSealByTheKeyItNamesIsGood() {
        assertEquals(Optional.empty(), fault(seal()));
    }

    @Test
    void oneOfAnotherRunIsNot() {
        assertEquals(Optional.of("fault.seal"), fault(Seal.by(key, "B", head, AT)));
    }

    @Test
    void oneOfAnotherMomentIsNot() {
        assertEquals(Optional.of("fault.seal"), fault(Seal.by(key, "A", head, AT.plusSeconds(1))));
    }

    @Test
    void oneOfTheRunAsItStoodBeforeIsNot() {
        RunHead before = RunHead.OF_NOTHING.and(chain.get(0));
        assertEquals(Optional.of("fault.seal-of-another-head"), fault(Seal.by(key, "A", before, AT)));
    }

    @Test
    void oneThatNamesTheKeyOfAnotherStationIsNot() {
        Event.Sealed good = seal();
        Event.Sealed other = Seal.by(another, "A", head, AT);
        assertEquals(
                Optional.of("fault.seal"),
                fault(new Event.Sealed(good.place(), good.head(), other.fingerprint(), other.key(), good.signature())));
    }

    @Test
    void oneWhoseFingerprintIsOfAnotherKeyIsNot() {
        Event.Sealed good = seal();
        assertEquals(
                Optional.of("fault.seal-key"),
                fault(new Event.Sealed(
                        good.place(), good.head(), another.shown().fingerprint(), good.key(), good.signature())));
    }

    @Test
    void oneWithNoKeyOrNoSignatureIsNot() {
        Event.Sealed good = seal();
        assertEquals(
                Optional.of("fault.seal-key"),
                fault(new Event.Sealed(good.place(), good.head(), good.fingerprint(), "?", good.signature())));
    }

    @Test
    void oneWhoseSignatureIsNoneIsNot() {
        Event.Sealed good = seal();
        assertEquals(
                Optional.of("fault.seal"),
                fault(new Event.Sealed(good.place(), good.head(), good.fingerprint(), good.key(), "?")));
    }

    /** Who rebuilds the whole chain can sign it by a key of their own alone: another key is named then. */
    @Test
    void aRebuiltChainIsSealedByAnotherKey() {
        assertEquals(Optional.empty(), fault(Seal.by(another, "A", head, AT)));
        ChainCheck check = new ChainCheck();
        chain.forEach(entry -> check.next(ChainCheck.look(entry, entry.body().getBytes(UTF_8))));
        assertTrue(check.result().seals().keys().contains(another.shown().fingerprint()));
        assertTrue(!check.result().seals().keys().contains(key.shown().fingerprint()));
    }
}
