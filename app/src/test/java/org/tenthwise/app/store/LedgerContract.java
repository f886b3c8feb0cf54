package org.tenthwise.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** What every ledger does, whatever lies behind it. */
public abstract class LedgerContract {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T00:15:00.5+01:00");

    private Ledger ledger;

    /** A ledger nothing was added to. */
    protected abstract Ledger empty() throws Exception;

    @BeforeEach
    final void begin() throws Exception {
        ledger = empty();
    }

    @AfterEach
    final void end() {
        ledger.close();
    }

    @Test
    void aNewLedgerIsEmptyAndWhole() throws CouldNotSave {
        assertEquals(Head.OF_NOTHING, ledger.head());
        assertEquals(List.of(), ledger.runs());
        assertEquals(List.of(), ledger.stored());
        assertEquals(List.of(), ledger.entries("run-1"));
        assertEquals(RunHead.OF_NOTHING, ledger.runHead("run-1"));
        assertEquals(Optional.empty(), ledger.headAt(1));
        assertTrue(ledger.verify().whole());
        assertEquals(List.of(), ledger.append(List.of()));
        assertEquals(Head.OF_NOTHING, ledger.head());
    }

    @Test
    void anEventOfEveryKindComesOutAsItWentIn() throws CouldNotSave {
        List<Entry> added = new ArrayList<>();
        for (Example example : Example.all()) {
            if (example.event().as(Event.Sealed.class).isPresent()) {
                continue; // good behind one head alone: see SealTest
            }
            added.add(ledger.append("run-1", AT, "Ä. Dreher", example.event()));
        }
        assertEquals(added, ledger.entries("run-1"));
        Verification found = new Verification(
                added.size(),
                ledger.head(),
                Optional.empty(),
                Map.of(),
                List.of(),
                new Seals(Map.of(), List.of("run-1"), Set.of()),
                false);
        assertEquals(found, ledger.verify());
    }

    @Test
    void severalEntriesOfSeveralRunsAreAddedAtOnceInTheirOrder() throws CouldNotSave {
        List<Entry> added = ledger.append(List.of(
                new NewEntry("run-b", AT, "A. Turner", reading("35.010")),
                new NewEntry(Entry.SHOP, AT.plusSeconds(1), "B. Fitter", reading("35.020")),
                new NewEntry("run-a", AT.plusSeconds(2), "B. Fitter", reading("35.030")),
                new NewEntry("run-b", AT, "A. Turner", reading("35.040"))));

        assertEquals(List.of(1L, 2L, 3L, 4L), added.stream().map(Entry::seq).toList());
        assertEquals(List.of("run-b", "run-a"), ledger.runs());
        assertEquals(List.of(added.get(0), added.get(3)), ledger.entries("run-b"));
        assertEquals(List.of(added.get(1)), ledger.entries(Entry.SHOP));
        assertEquals(
                List.of(1L, 4L),
                ledger.stored("run-b").stream().map(StoredEntry::seq).toList());
        assertTrue(ledger.verify().whole());
    }

    @Test
    void eachEntryIsTiedToTheOneBeforeItInTheLedgerAndInItsRun() throws CouldNotSave {
        ledger.append("run-1", AT, "A. Turner", reading("35.010"));
        ledger.append("run-2", AT, "A. Turner", reading("35.020"));
        ledger.append("run-1", AT, "A. Turner", reading("35.030"));

        List<StoredEntry> stored = ledger.stored();
        NewEntry third = new NewEntry("run-1", AT, "A. Turner", reading("35.030"));
        RunHead before = RunHead.OF_NOTHING.and(stored.get(0));
        assertEquals(StoredEntry.behind(stored.get(1).asHead(), before, third), stored.get(2));
        assertEquals(stored.get(2).asHead(), ledger.head());
        assertEquals(before.and(stored.get(2)), ledger.runHead("run-1"));
        assertEquals(Optional.of(stored.get(1).asHead()), ledger.headAt(2));
        assertEquals(Optional.empty(), ledger.headAt(4));
    }

    private static Event reading(String figure) {
        return new StepEvent.ReadingTaken(3, "1.1", new Written(figure, Unit.MILLIMETRE));
    }
}
