package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * The root of an invented Tr 40×7, read across its grooves by a hand that answers, strikes out, takes other gauges and
 * reads again at any time. It passes exactly when two readings count, an answer that counts was given after everything
 * read in the pass, and both sizes are inside by the answer: with M² − 12.25 between 31.5² and 32.5² where points stood
 * in opposite grooves.
 */
class AcrossGroovesRunsTest {

    private static final int RUNS = 500;
    private static final int DEEDS = 40;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final BigDecimal HALF_A_PITCH_SQUARED = new BigDecimal("12.25");
    private static final BigDecimal LEAST_SQUARED = new BigDecimal("992.25");
    private static final BigDecimal MOST_SQUARED = new BigDecimal("1056.25");
    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Root"
            method = "Point micrometer."
            lower = 31.500
            upper = 32.500
            places = ["front", "back"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            grooves = { pitch = 7 }
            """);

    private final Map<Answer, Integer> passedBy = new EnumMap<>(Answer.class);

    @Test
    void nothingPassesByAnAnswerThatSaysNothingOfItsReadings() throws Exception {
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + RUNS; seed++) {
            run(seed);
        }
        assertTrue(
                passedBy.values().stream().allMatch(times -> times > RUNS / 50) && passedBy.size() == 2,
                passedBy::toString);
    }

    private void run(long seed) throws Exception {
        Random random = new Random(seed);
        RunSession session =
                new Runs(new MemoryLedger(), CLOCK).begin(new RunHeader(PLAN, "1", "L-1", "Lathe 4", "Setter 1"));
        for (int deed = 0; deed < DEEDS; deed++) {
            deed(session, random);
            List<Entry> entries = session.state().sheet().run().entries();
            boolean passed = session.state().line().finding().verdict().passed();
            Optional<Answer> by = passes(entries);
            assertEquals(
                    by.isPresent(),
                    passed,
                    () -> "Seed " + seed + ": "
                            + entries.stream().skip(1).map(Entry::event).toList());
            by.ifPresent(answer -> passedBy.merge(answer, 1, Integer::sum));
        }
    }

    private static void deed(RunSession session, Random random) throws Exception {
        List<Entry> entries = session.state().sheet().run().entries();
        switch (random.nextInt(12)) {
            case 0 ->
                session.strikeOut(entries.get(random.nextInt(entries.size())).seq(), "Gauge slipped");
            case 1 -> session.gauge().choose("G-" + random.nextInt(3), Optional.empty());
            case 2 -> session.answer(random.nextBoolean() ? Answer.OPPOSITE_GROOVES : Answer.SQUARE_ACROSS);
            case 3 -> {
                if (random.nextInt(3) == 0) {
                    session.again(Why.MEASURED_AGAIN);
                }
            }
            default -> {
                if (session.state().asked() instanceof Prompt.WhichGauge) {
                    session.gauge().choose("G-1", Optional.empty());
                } else if (session.state().asked() instanceof Prompt.Answering) {
                    session.answer(random.nextBoolean() ? Answer.OPPOSITE_GROOVES : Answer.SQUARE_ACROSS);
                } else {
                    session.enter(BigDecimal.valueOf(31_600 + random.nextInt(1_150), 3)
                            .toPlainString());
                }
            }
        }
    }

    /** The answer by which it passes; absent where it does not. */
    private static Optional<Answer> passes(List<Entry> entries) {
        Set<Long> struck = new HashSet<>();
        entries.forEach(entry -> {
            if (entry.event() instanceof Event.StruckOut out) {
                struck.add(out.entry());
            }
        });
        Map<String, BigDecimal> readings = new HashMap<>();
        Optional<Answer> answer = Optional.empty();
        boolean set = false;
        for (Entry entry : entries) {
            Event event = entry.event();
            boolean counts = !struck.contains(entry.seq());
            if (event instanceof StepEvent.PassBegun) {
                readings.clear();
                answer = Optional.empty();
            } else if (event instanceof StepEvent.GaugeSet) {
                set = counts;
            } else if (event instanceof StepEvent.GaugeChosen) {
                set = false;
            } else if (event instanceof StepEvent.ReadingTaken taken) {
                answer = Optional.empty();
                readings.remove(taken.slot());
                if (set && counts) {
                    readings.put(taken.slot(), taken.typed().figure());
                }
            } else if (event instanceof StepEvent.Answered answered) {
                answer = counts ? Optional.of(answered.answer()) : Optional.empty();
            }
        }
        BigDecimal off =
                answer.filter(Answer.OPPOSITE_GROOVES::equals).isPresent() ? HALF_A_PITCH_SQUARED : BigDecimal.ZERO;
        boolean inside = readings.values().stream()
                .map(read -> read.pow(2).subtract(off))
                .allMatch(square -> square.compareTo(LEAST_SQUARED) >= 0 && square.compareTo(MOST_SQUARED) <= 0);
        return answer.filter(any -> readings.size() == 2 && inside);
    }
}
