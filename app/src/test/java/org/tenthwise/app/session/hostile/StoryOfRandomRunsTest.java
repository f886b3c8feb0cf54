package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.app.story.SameToldEverywhereTest;
import org.tenthwise.app.story.StepStory;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.story.StoryLine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.HoldOpened;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Settled;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/**
 * After every deed of random runs the story of the step in hand is that of the entries: nothing struck out is told as
 * if it counted, nothing of the part before as if it were of this one, and no hold point as open that is not.
 */
class StoryOfRandomRunsTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final int RUNS = 60;
    private static final int DEEDS = 60;

    private int gone;
    private int opened;
    private int partsBefore;

    @Test
    void afterEveryDeedItIsThatOfTheEntries() throws Exception {
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + RUNS; seed++) {
            shop(seed);
        }
        assertTrue(gone > RUNS, "hardly anything was struck out: " + gone);
        assertTrue(opened > RUNS, "hardly a hold point was opened: " + opened);
        assertTrue(partsBefore > RUNS, "hardly a part before: " + partsBefore);
    }

    /** Two parts, one after the other. */
    private void shop(long seed) throws Exception {
        Random random = new Random(seed);
        RandomPlan plan = RandomPlan.of(random);
        Runs shop = new Runs(new MemoryLedger(), CLOCK);
        for (String serial : List.of("A1", "B2")) {
            RunHeader header = new RunHeader(plan.plan(), serial, "L-1", "Lathe 4", "Setter 1");
            Hand hand = new Hand(plan, shop, shop.begin(header), random);
            for (int deed = 0; deed < DEEDS; deed++) {
                hand.deed();
                State state = hand.session().state();
                story(state, seed);
                SameToldEverywhereTest.same(state);
                state.opened().forEach((step, how) -> {
                    opened++;
                    assertTrue(
                            state.sheet().plan().step(step).hold().stream()
                                    .allMatch(
                                            number -> state.sheet().line(number).settled()),
                            () -> "Seed " + seed);
                });
            }
            holds(hand.session().state(), seed);
        }
    }

    private void story(State state, long seed) {
        String serial = state.sheet().run().begun().serial();
        List<StoryChapter> chapters = StepStory.of(state, WORDS).chapters();
        long told = 0;
        long counted = 0;
        for (StoryChapter chapter : chapters) {
            assertFalse(chapter.lines().isEmpty());
            if (chapter.heading().startsWith("This part, serial " + serial)) {
                told += chapter.lines().stream()
                        .filter(StoryOfRandomRunsTest::isTaken)
                        .count();
                counted += chapter.lines().stream()
                        .filter(line -> isTaken(line) && line.counts())
                        .count();
            } else if (chapter.heading().startsWith("Last part")) {
                partsBefore++;
                assertEquals("B2", serial, () -> "Seed " + seed);
                assertTrue(
                        chapter.lines().stream().allMatch(line -> line.words().startsWith("A1 · ")),
                        () -> "Seed " + seed);
            }
        }
        long due = 0;
        long counting = 0;
        for (Pass pass : state.line().passes()) {
            due += pass.readings().size()
                    + pass.temperatures().size()
                    + pass.answers().size()
                    + pass.documents().size();
            counting += state.line().found(pass).stream()
                    .mapToLong(found -> found.measured().size())
                    .sum();
            counting += pass.temperatures().stream()
                    .filter(taken -> pass.taking(taken.of()).equals(Optional.of(taken)))
                    .count();
            counting += pass.answers().stream()
                    .filter(given -> pass.answering(given.question().today()).equals(Optional.of(given)))
                    .count();
            counting += pass.giving().isPresent() ? 1 : 0;
        }
        gone += (int) (due - counting);
        assertEquals(due, told, () -> "Seed " + seed + ": " + chapters);
        assertEquals(counting, counted, () -> "Seed " + seed + ": " + chapters);
    }

    /** Not what a pass was begun for, nor what it came to. */
    private static boolean isTaken(StoryLine line) {
        return !line.when().isEmpty() && !line.words().startsWith("Measured ");
    }

    /** What opened a hold point is found by looking at the run after every entry. */
    private static void holds(State state, long seed) {
        for (Map.Entry<Integer, HoldOpened> hold : state.opened().entrySet()) {
            for (Settled settled : hold.getValue().settled()) {
                if (settled.how() == Settled.How.PASSED) {
                    assertEquals(
                            passedSince(state.sheet(), settled.line().step()),
                            settled.by().seq(),
                            () -> "Seed " + seed);
                }
            }
        }
    }

    private static long passedSince(Sheet sheet, Step step) {
        List<Entry> entries = sheet.run().entries();
        int at = entries.size();
        while (passed(sheet, entries.subList(0, at - 1), step)) {
            at--;
        }
        return entries.get(at - 1).seq();
    }

    private static boolean passed(Sheet sheet, List<Entry> entries, Step step) {
        Line line = Sheet.of(sheet.plan(), new Run(entries)).line(step.number());
        return line.finding().verdict().passed();
    }
}
