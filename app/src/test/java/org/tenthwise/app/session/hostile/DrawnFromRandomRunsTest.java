package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
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
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.DrawnRowsOfFile;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/** What lists are read from, after runs by a hand that does anything at any time, worked one beside the other. */
class DrawnFromRandomRunsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final int RUNS = 12;
    private static final int DEEDS = 700;
    private static final int FILTERS = 120;

    /** Most of these some runs have; a part number and the mark of a gauge are told by their capitals too. */
    private static final Map<SoughtBy, List<String>> TEXTS = new EnumMap<>(Map.ofEntries(
            Map.entry(SoughtBy.PART_NUMBER, List.of("H-1", "H-1", "h-1")),
            Map.entry(SoughtBy.SERIAL, List.of("00", "01", "02", "03", "04", "05", "06", "07", "08", "1", "0%")),
            Map.entry(SoughtBy.LOT, List.of("L-0", "l-1", "L-2", "L_1")),
            Map.entry(SoughtBy.PERSON, List.of("Setter 1", "setter 2", "Inspector 1", "Setter")),
            Map.entry(SoughtBy.MACHINE, List.of("Lathe 0", "lathe 1", "Lathe 2")),
            Map.entry(SoughtBy.GAUGE, List.of("G-0", "G-1", "G-2", "g-1")),
            Map.entry(SoughtBy.VERDICT, words(VerdictKind.values())),
            Map.entry(SoughtBy.KIND, words(Purpose.values())),
            Map.entry(SoughtBy.DESIGNATOR, List.of("Key", "major", "Minor")),
            Map.entry(SoughtBy.BALLOON, List.of("a1", "a2", "A4", "a5", "4")),
            Map.entry(SoughtBy.CHARACTERISTIC, List.of("1", "2", "Check 1", "check 3", "Check 4", "04")),
            Map.entry(SoughtBy.FROM, List.of("2026-11-24", "2026-11-25", "2026-11-26", "0001-01-01")),
            Map.entry(SoughtBy.TO, List.of("2026-11-24", "2026-11-25", "2026-11-26", "9999-12-31"))));

    private static List<String> words(Enum<?>... choices) {
        return Stream.of(choices).map(Word::of).toList();
    }

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
                Occasion occasion = plan.occasion(random);
                hands.add(new Hand(plan, runs, runs.begin(header.begunFor(occasion)), random));
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
        whateverIsLookedForIsFoundAlike(due, asked);
    }

    /** Filters of every sort, each alone and then two to four at a time; most are of what there is, some of nothing. */
    private void whateverIsLookedForIsFoundAlike(History due, History asked) {
        Set<SoughtBy> found = EnumSet.noneOf(SoughtBy.class);
        TEXTS.forEach((by, texts) -> texts.forEach(text -> {
            if (isFoundAlike(due, asked, Sought.ALL.with(by, text))) {
                found.add(by);
            }
        }));
        assertEquals(EnumSet.allOf(SoughtBy.class), found, () -> "seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < FILTERS; i++) {
            isFoundAlike(due, asked, sought(random, 2 + random.nextInt(3)));
        }
        isFoundAlike(due, asked, Sought.ALL);
    }

    /** @return whether anything was found */
    private boolean isFoundAlike(History due, History asked, Sought sought) {
        String readings = readings(due, sought);
        assertEquals(readings, readings(asked, sought), () -> "seed " + seed + " " + sought);
        assertEquals(due.runs(sought), asked.runs(sought), () -> "seed " + seed + " " + sought);
        assertEquals(points(due, sought), points(asked, sought), () -> "seed " + seed + " " + sought);
        return !readings.isEmpty();
    }

    private static Sought sought(Random random, int filters) {
        Sought sought = Sought.ALL;
        for (int i = 0; i < filters; i++) {
            SoughtBy by = SoughtBy.values()[random.nextInt(SoughtBy.values().length)];
            List<String> texts = TEXTS.get(by);
            String text = texts.get(random.nextInt(texts.size()));
            boolean exact = EnumSet.of(SoughtBy.PART_NUMBER, SoughtBy.GAUGE, SoughtBy.VERDICT, SoughtBy.KIND)
                    .contains(by);
            sought = sought.with(by, !exact && random.nextInt(3) == 0 ? text.toUpperCase(Locale.ROOT) : text);
        }
        return sought;
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

    private static String points(History history, Sought sought) {
        StringBuilder all = new StringBuilder();
        history.points(sought, (run, step, size) -> all.append(run.id())
                .append(' ')
                .append(step)
                .append(' ')
                .append(size)
                .append('\n'));
        return all.toString();
    }

    private static String readings(History history, Sought sought) {
        StringBuilder all = new StringBuilder();
        history.readings(sought, (run, step, reading) -> all.append(run.id())
                .append(' ')
                .append(step)
                .append(' ')
                .append(reading)
                .append('\n'));
        return all.toString();
    }
}
