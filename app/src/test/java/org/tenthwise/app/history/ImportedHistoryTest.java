package org.tenthwise.app.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.StationElsewhere;
import org.tenthwise.app.store.sqlite.DrawnRowsOfFile;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;

/** Lists and histories of a store that runs of two others came into. */
class ImportedHistoryTest {

    private static final PartId PART = DemoPart.SCREW_CARRIER.plan().part();
    private static final RunQuery RECORDS = new RunQuery(RunShelf.CLOSED, Optional.empty(), "", Optional.empty(), 1);

    @TempDir
    private Path folder;

    private StationElsewhere lathe;
    private StationElsewhere mill;
    private Path store;
    private Ledger desk;

    @BeforeEach
    void takeRunsIn() throws Exception {
        lathe = new StationElsewhere(folder.resolve("lathe.db"), "aa11bb22");
        mill = new StationElsewhere(folder.resolve("mill.db"), "cc33dd44");
        lathe.make("one");
        lathe.make("two");
        lathe.note("two", "seen again");
        mill.begin("other");
        mill.make("one");
        mill.putAway("other");
        store = folder.resolve("desk.db");
        desk = new SqliteStores().open(store);
        desk.takeIn(lathe.bundle("two", "one"), StationElsewhere.AT, "Inspector 1");
        desk.takeIn(mill.bundle("one", "other"), StationElsewhere.AT, "Inspector 1");
    }

    @AfterEach
    void letGo() {
        lathe.close();
        mill.close();
        desk.close();
    }

    @Test
    void closedRunsStandAmongTheRecordsTheOneLastWorkedOnFirst() {
        assertEquals(
                List.of("two@aa11bb22", "one@cc33dd44", "one@aa11bb22"), pages(desk.history(), RunShelf.CLOSED, 1));
        assertEquals(
                List.of("two@aa11bb22", "one@cc33dd44", "one@aa11bb22"), pages(desk.history(), RunShelf.CLOSED, 2));
        assertEquals(List.of("other@cc33dd44"), pages(desk.history(), RunShelf.PUT_AWAY, 6));
        assertEquals(List.of(), pages(desk.history(), RunShelf.OPEN, 6));
    }

    @Test
    void runsOfThisStoreComeBeforeThem() throws Exception {
        try (StationElsewhere here = new StationElsewhere(folder.resolve("here.db"), "ee55ff66")) {
            here.make("mine");
            here.make("mine-2");
            here.ledger().takeIn(lathe.bundle("two", "one"), StationElsewhere.AT, "Inspector 1");
            History history = here.ledger().history();
            List<String> all = List.of("mine-2", "mine", "two@aa11bb22", "one@aa11bb22");
            assertEquals(all, pages(history, RunShelf.CLOSED, 1));
            assertEquals(all, pages(history, RunShelf.CLOSED, 3));
            assertEquals("mine-2", history.last().orElseThrow().id());
            assertEquals("mine-2", history.lastOf(PART).orElseThrow().id());
        }
    }

    @Test
    void whatGoesOnHereIsNeverTakenFromThem() {
        History history = desk.history();
        assertEquals(Optional.empty(), history.last());
        assertEquals(Optional.empty(), history.lastOf(PART));
        assertEquals(List.of(), history.openOn("Lathe 4"));
        lathe.ledger().history().runs(RECORDS).stream()
                .flatMap(run -> run.plan().stream())
                .flatMap(plan -> plan.steps().stream())
                .forEach(step -> assertEquals(
                        Optional.empty(),
                        history.lastPart(new LastPartQuery(PART, "another serial", step, Long.MAX_VALUE))));
    }

    @Test
    void aSerialThatWasMadeElsewhereIsKnown() {
        String serial = lathe.ledger().history().last().orElseThrow().serial();
        assertEquals(
                List.of("one@aa11bb22", "two@aa11bb22", "other@cc33dd44", "one@cc33dd44"),
                desk.history().runsOf(PART, serial).stream().map(RunFacts::id).toList());
    }

    @Test
    void theirReadingsAreThoseOfTheirOwnStore() {
        List<String> there = readings(lathe.ledger());
        there.removeIf(row -> !row.startsWith("one"));
        List<String> here = readings(desk);
        here.removeIf(row -> !row.startsWith("one@aa11bb22"));

        assertFalse(there.isEmpty());
        assertEquals(
                there, here.stream().map(row -> row.replace("@aa11bb22", "")).toList());
        assertEquals(List.of(), desk.history().unjudged());
    }

    @Test
    void aPlanOfARunThatCameInIsReadFromIt() {
        RunFacts run = desk.history().runs(RECORDS).get(0).run();
        assertTrue(run.isImported());
        assertEquals(PART, new SqliteStoresAnew(store).plan(run).orElseThrow().part());
    }

    /** Another that opens the store to read, and so has read no plan yet. */
    private record SqliteStoresAnew(Path store) {
        Optional<Plan> plan(RunFacts run) {
            try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                return kept.history().plan(run);
            } catch (CouldNotOpen e) {
                throw new AssertionError(e);
            }
        }
    }

    @Test
    void drawnAnewTheRowsAreTheSame() throws Exception {
        desk.close();
        List<String> drawn = DrawnRowsOfFile.of(store);
        DrawnRowsOfFile.spoil(store);
        desk = new SqliteStores().open(store);
        assertEquals(String.join("\n", drawn), String.join("\n", DrawnRowsOfFile.of(store)));
    }

    @Test
    void aRunThatGrewIsDrawnAsItIsNow() throws Exception {
        lathe.note("one", "late");
        desk.takeIn(lathe.bundle("one"), StationElsewhere.AT, "Inspector 1");
        assertEquals(
                lathe.ledger().head().seq(),
                desk
                                .history()
                                .runsOf(
                                        PART,
                                        lathe.ledger()
                                                .history()
                                                .last()
                                                .orElseThrow()
                                                .serial())
                                .stream()
                                .filter(run -> run.id().equals("one@aa11bb22"))
                                .mapToLong(RunFacts::last)
                                .sum()
                        % KeptEntries.MOST_ENTRIES);
        drawnAnewTheRowsAreTheSame();
    }

    private static List<String> pages(History history, RunShelf shelf, int most) {
        List<String> all = new ArrayList<>();
        Optional<RunFacts> after = Optional.empty();
        List<RunSummary> page;
        do {
            page = history.runs(new RunQuery(shelf, Optional.empty(), "", after, most));
            page.forEach(run -> all.add(run.id()));
            after = page.stream().reduce((earlier, later) -> later).map(RunSummary::run);
        } while (!page.isEmpty());
        return all;
    }

    private static List<String> readings(KeptEntries kept) {
        List<String> rows = new ArrayList<>();
        kept.history().readings(Sought.ALL, (run, step, reading) -> rows.add(run.id() + " " + step + " " + reading));
        return rows;
    }
}
