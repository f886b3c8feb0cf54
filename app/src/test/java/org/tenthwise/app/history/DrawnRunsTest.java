package org.tenthwise.app.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.DrawnRowsOfFile;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.StepEvent;

/** What is drawn of runs that cannot be judged, and while the store is written to. */
class DrawnRunsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:31:00Z"), ZoneOffset.ofHours(1));

    @TempDir
    private Path folder;

    private Path store;
    private Ledger ledger;

    @BeforeEach
    void open() throws Exception {
        store = folder.resolve("shop.db");
        ledger = new SqliteStores().open(store);
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private String begin(String serial) throws CouldNotSave {
        return new Runs(ledger, CLOCK)
                .begin(new RunHeader(DemoPart.WINCH_BARREL_END.plan(), serial, "L-1", "Lathe 4", "Setter 1"))
                .id();
    }

    private void note(String run, int step) throws CouldNotSave {
        ledger.append(run, OffsetDateTime.now(CLOCK), "Setter 1", new StepEvent.NoteMade(step, "seen"));
    }

    @Test
    void anEntryIsSavedThoughItsRunCannotBeJudgedWithItAndTheRunIsARowThatSaysSo() throws Exception {
        String run = begin("001");
        new Runs(ledger, CLOCK).open(run).answer(Answer.YES);
        assertFalse(readings(ledger).isEmpty());

        note(run, 999); // the plan has no such step
        assertEquals(3, ledger.head().seq());
        assertTrue(only().run().stand().isEmpty());
        assertEquals(List.of(), only().steps());
        assertEquals(List.of(), readings(ledger));
        assertEquals(drawnAnew(), DrawnRowsOfFile.of(store));

        note(run, 1);
        assertTrue(only().run().stand().isPresent(), "it can be judged again");
        assertFalse(readings(ledger).isEmpty());
        assertEquals(drawnAnew(), DrawnRowsOfFile.of(store));
    }

    private RunSummary only() {
        List<RunSummary> all =
                ledger.history().runs(new RunQuery(RunShelf.OPEN, Optional.empty(), "", Optional.empty(), 2));
        assertEquals(1, all.size());
        return all.get(0);
    }

    private List<String> drawnAnew() throws Exception {
        ledger.close();
        DrawnRowsOfFile.spoil(store);
        ledger = new SqliteStores().open(store);
        return DrawnRowsOfFile.of(store);
    }

    @Test
    void aReadingWrittenWhileAHistoryIsReadNeitherWaitsNorHandsAnythingOutTwice() throws Exception {
        for (int serial = 100; serial < 145; serial++) {
            new Runs(ledger, CLOCK).open(begin(String.valueOf(serial))).answer(Answer.YES);
        }
        List<String> due = readings(ledger);
        assertEquals(45, due.size());
        List<String> seen = new ArrayList<>();
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            kept.history().readings(Sought.ALL, (run, step, reading) -> {
                seen.add(run.id() + " " + step.number());
                write(run.id());
            });
        }
        assertEquals(due, seen);
    }

    private void write(String run) {
        try {
            note(run, 1);
        } catch (CouldNotSave e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> readings(KeptEntries kept) {
        List<String> rows = new ArrayList<>();
        kept.history().readings(Sought.ALL, (run, step, reading) -> rows.add(run.id() + " " + step.number()));
        return rows;
    }
}
