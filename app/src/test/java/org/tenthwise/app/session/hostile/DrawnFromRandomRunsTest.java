package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.history.NameUse;
import org.tenthwise.app.history.ReadFromEntries;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.DrawnRowsOfFile;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Step;

/** What lists are read from, after runs by a hand that does anything at any time, worked one beside the other. */
class DrawnFromRandomRunsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final int RUNS = 12;
    private static final int DEEDS = 700;

    @TempDir
    private Path dir;

    private Path store;
    private long seed;

    @BeforeEach
    void workRandomRuns() throws Exception {
        store = dir.resolve("shop.db");
        seed = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        Random random = new Random(seed);
        try (Ledger ledger = new SqliteStores().open(store)) {
            Runs runs = new Runs(ledger, CLOCK);
            List<Hand> hands = new ArrayList<>();
            for (int i = 0; i < RUNS; i++) {
                RandomPlan plan = RandomPlan.of(random);
                RunHeader header = new RunHeader(
                        plan.plan(), "0" + random.nextInt(9), "L-" + i % 3, "Lathe " + i % 2, "Setter " + i % 4);
                hands.add(new Hand(plan, runs, runs.begin(header), random));
            }
            for (int deed = 0; deed < DEEDS; deed++) {
                hands.get(random.nextInt(RUNS)).deed();
            }
        }
    }

    @Test
    void tablesMadeAnewFromTheEntriesAreThoseThatWereDrawnWithThem() throws Exception {
        List<String> drawn = DrawnRowsOfFile.of(store);
        assertFalse(drawn.isEmpty());

        DrawnRowsOfFile.spoil(store);
        assertNotEquals(drawn, DrawnRowsOfFile.of(store), () -> "seed " + seed);
        new SqliteStores().open(store).close();

        assertEquals(String.join("\n", drawn), String.join("\n", DrawnRowsOfFile.of(store)), () -> "seed " + seed);
    }

    @Test
    void everyQuestionIsAnsweredAsByReadingAllEntries() throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            History plainest = new ReadFromEntries(kept);
            same(plainest, kept.history());
            DrawnRowsOfFile.spoil(store);
            same(plainest, kept.history());
        }
    }

    private void same(History due, History asked) {
        for (RunShelf shelf : RunShelf.values()) {
            for (String words : List.of("", "0", "setter 1", "L-2 lathe", "insp %")) {
                for (Optional<String> machine : List.of(Optional.<String>empty(), Optional.of("Lathe 1"))) {
                    assertEquals(
                            pages(due, shelf, machine, words),
                            pages(asked, shelf, machine, words),
                            () -> "seed " + seed);
                }
            }
        }
        assertEquals(due.last(), asked.last());
        assertEquals(due.unjudged(), asked.unjudged());
        assertEquals(due.openOn("Lathe 0"), asked.openOn("Lathe 0"));
        RunFacts last = due.last().orElseThrow();
        assertEquals(due.countMatters(), asked.countMatters());
        assertEquals(due.accepted(last.part(), 50), asked.accepted(last.part(), 50), () -> "seed " + seed);
        for (int serial = 0; serial < 9; serial++) {
            PartId part = new PartId(last.part(), last.revision());
            assertEquals(due.openOf(part, "0" + serial), asked.openOf(part, "0" + serial));
            assertEquals(due.runsOf(part, "0" + serial), asked.runsOf(part, "0" + serial));
        }
        assertEquals(
                due.lastOf(new PartId(last.part(), last.revision())),
                asked.lastOf(new PartId(last.part(), last.revision())));
        sameLastParts(due, asked, last);
        for (NameUse.Kind kind : NameUse.Kind.values()) {
            for (String of : List.of("", last.part(), GaugeKind.MICROMETER.key(), GaugeKind.BORE_GAUGE.key())) {
                assertEquals(due.names(kind, of), asked.names(kind, of), () -> "seed " + seed);
            }
        }
        assertEquals(due.runsWith(GaugeKind.BORE_GAUGE, "G-1"), asked.runsWith(GaugeKind.BORE_GAUGE, "G-1"));
        assertEquals(due.runsSetOn("M-1"), asked.runsSetOn("M-1"));
        assertEquals(readings(due), readings(asked), () -> "seed " + seed);
    }

    private void sameLastParts(History due, History asked, RunFacts last) {
        PartId part = new PartId(last.part(), last.revision());
        List<Step> steps = due.runs(new RunQuery(last.shelf(), Optional.empty(), "", Optional.empty(), 1)).stream()
                .flatMap(run -> run.plan().stream())
                .flatMap(plan -> plan.steps().stream())
                .toList();
        for (Step step : steps) {
            for (long before : new long[] {Long.MAX_VALUE, last.begun()}) {
                LastPartQuery query = new LastPartQuery(part, last.serial(), step, before);
                assertEquals(due.lastPart(query), asked.lastPart(query), () -> "seed " + seed);
            }
        }
    }

    /** All pages of a list, three runs a page. */
    private static List<RunSummary> pages(History history, RunShelf shelf, Optional<String> machine, String words) {
        List<RunSummary> all = new ArrayList<>();
        List<RunSummary> page;
        do {
            Optional<RunFacts> after = all.isEmpty()
                    ? Optional.empty()
                    : Optional.of(all.get(all.size() - 1).run());
            page = history.runs(new RunQuery(shelf, machine, words, after, 3));
            all.addAll(page);
        } while (!page.isEmpty());
        return all;
    }

    private static String readings(History history) {
        StringBuilder all = new StringBuilder();
        history.readings(Sought.ALL, (run, step, reading) -> all.append(run.id())
                .append(' ')
                .append(step)
                .append(' ')
                .append(reading)
                .append('\n'));
        return all.toString();
    }
}
