package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;

/**
 * Nothing passes that should not: random runs, worked by a hand that does anything at any time, are judged after every
 * deed by the sheet and by the oracle. 2,000 runs, 100,000 with the profile {@code long}, or as many as
 * {@code -Dhostile.runs} says; the seed of a run that went wrong is in the message, and {@code -Dhostile.seed} begins
 * there.
 */
class HostileRunsTest {

    private static final int MOST_DEEDS = 70;
    /** Of so few runs, by chance, none may come to the rarer ends: a concession is one run in fifty. */
    private static final int TOO_FEW_TO_TELL = 1_000;

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private final Map<Outcome, Integer> ended = new EnumMap<>(Outcome.class);
    private final Map<String, Integer> passedBy = new TreeMap<>();
    private final Map<String, Integer> proposals = new TreeMap<>();
    /**
     * Where the sheet does not pass what the oracle would: the answers with a gauge whose setting was struck out, and
     * the like.
     */
    private final Map<String, Integer> strict = new TreeMap<>();

    @Test
    void nothingPassesThatTheOracleDenies() throws Exception {
        int runs = Integer.getInteger("hostile.runs", 2_000);
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + runs; seed++) {
            run(seed);
        }
        System.getLogger(getClass().getName())
                .log(
                        System.Logger.Level.INFO,
                        "{0} runs from seed {1}: ended {2}; steps passed {3}; stricter than the oracle {4}; cuts {5}",
                        runs,
                        Long.toString(first),
                        ended,
                        passedBy,
                        strict,
                        proposals);
        if (runs >= TOO_FEW_TO_TELL) {
            allSortsOfEndsAreMet(runs);
        }
    }

    private void allSortsOfEndsAreMet(int runs) {
        assertTrue(ended.getOrDefault(Outcome.CONFORMS, 0) > runs / 50, () -> "hardly a run came to its end: " + ended);
        assertTrue(
                ended.getOrDefault(Outcome.CONFORMS_WITH_CONCESSIONS, 0) > 0,
                () -> "no concession came to an end: " + ended);
        assertTrue(
                ended.getOrDefault(Outcome.ASKED_CONFORMS, 0) > 0,
                () -> "no run that leaves something out came to its end: " + ended);
        assertTrue(
                passedBy.keySet()
                        .containsAll(Set.of(
                                "Asks",
                                "RunOut",
                                "Indicated",
                                "Size",
                                "Angle",
                                "Scale",
                                "Position",
                                "Plug",
                                "Thread",
                                "Paper",
                                "Difference")),
                () -> "kinds: " + passedBy);
        assertTrue(
                proposals.keySet().containsAll(Set.of("OFFERED", "SIGNED", "UNEVEN", "BELOW_LEAST_CUT")),
                () -> "cuts: " + proposals);
    }

    private void run(long seed) throws Exception {
        Random random = new Random(seed);
        RandomPlan plan = RandomPlan.of(random);
        MemoryLedger ledger = new MemoryLedger();
        Runs shop = new Runs(ledger, CLOCK);
        RunSession session = shop.begin(
                new RunHeader(plan.plan(), "1", "L-1", "Lathe 4", "Setter 1").begunFor(plan.occasion(random)));
        Hand hand = new Hand(plan, shop, session, random);
        Set<Long> looked = new HashSet<>();
        Map<String, Optional<Proposal>> proposed = new HashMap<>();
        for (int deed = 0; deed < MOST_DEEDS; deed++) {
            List<Entry> before = ledger.entries(session.id());
            hand.deed();
            List<Entry> after = ledger.entries(session.id());
            if (after.size() > before.size()) {
                nothingBehindAShutHoldPoint(seed, plan, before, after);
                noCutThatScraps(
                        seed, plan, before, after, hand.session().state().sheet());
                nothingPassedThatIsNot(seed, plan, after, hand.session().state().sheet(), looked);
                everyCutStaysAsItWasProposed(
                        seed, plan, after, hand.session().state().sheet(), proposed);
            }
        }
        Sheet sheet = hand.session().state().sheet();
        ended.merge(sheet.outcome(), 1, Integer::sum);
    }

    private void nothingPassedThatIsNot(
            long seed, RandomPlan plan, List<Entry> entries, Sheet sheet, Set<Long> looked) {
        Oracle oracle = new Oracle(plan.facts(), entries);
        for (Line line : sheet.lines()) {
            Facts facts = plan.facts(line.step().number());
            Oracle.Says says = oracle.passed(facts);
            boolean passed = line.finding().verdict().passed();
            if (passed && says == Oracle.Says.NOT_PASSED) {
                wrong(seed, "check %d passes".formatted(facts.number()), plan, entries);
            }
            if (line.asked() != oracle.inRun(facts)) {
                wrong(seed, "check %d is in the run: %s".formatted(facts.number(), line.asked()), plan, entries);
            }
            if (line.settled() && !oracle.settled(facts)) {
                wrong(seed, "check %d is settled".formatted(facts.number()), plan, entries);
            }
            if (passed) {
                passedBy.merge(facts.what().getClass().getSimpleName(), 1, Integer::sum);
            } else if (says == Oracle.Says.PASSED) {
                strict.merge(
                        facts.what().getClass().getSimpleName() + " "
                                + line.finding().verdict().standing(),
                        1,
                        Integer::sum);
            }
        }
        Outcome outcome = sheet.outcome();
        if (outcome == Outcome.CONFORMS && !oracle.conforms()
                || outcome == Outcome.CONFORMS_WITH_CONCESSIONS && !oracle.conformsWithConcessions()
                || outcome == Outcome.ASKED_CONFORMS && !oracle.askedConforms()) {
            wrong(seed, "the part is said to be " + outcome, plan, entries);
        }
        if (oracle.scrapped() && outcome != Outcome.DOES_NOT_CONFORM) {
            wrong(seed, "a scrapped part is said to be " + outcome, plan, entries);
        }
    }

    /**
     * No amount and no cut before everything is read, unless it was signed for, and none that takes a place out on
     * either side.
     */
    private void noCutThatScraps(long seed, RandomPlan plan, List<Entry> before, List<Entry> after, Sheet sheet) {
        CutOracle then = new CutOracle(plan.facts(), before);
        for (Entry entry : after.subList(before.size(), after.size())) {
            if (entry.event() instanceof StepEvent.PassBegun begun
                    && begun.why() == StepEvent.PassBegun.Why.CUT
                    && !then.mayCut(plan.facts(begun.step()))) {
                wrong(seed, "check %d is cut".formatted(begun.step()), plan, after);
            }
        }
        CutOracle now = new CutOracle(plan.facts(), after);
        for (Line line : sheet.lines()) {
            line.finding().proposal().ifPresent(proposal -> {
                Facts facts = plan.facts(line.step().number());
                proposals.merge(
                        proposal.cut() instanceof EvenCut.NoCut refused
                                ? refused.reason().name()
                                : proposal.unread().isEmpty() ? "OFFERED" : "SIGNED",
                        1,
                        Integer::sum);
                Optional<String> against = proposal.cut() instanceof EvenCut.NoCut refused
                        ? now.againstTheMost(facts, refused.safe())
                        : proposal.change().flatMap(change -> now.against(facts, change));
                against.ifPresent(
                        why -> wrong(seed, "check %d: %s %s".formatted(facts.number(), proposal, why), plan, after));
            });
        }
    }

    /**
     * Whatever is struck out, set or said of the machine later. @param proposed by step and pass, as the pass stood
     * last
     */
    private static void everyCutStaysAsItWasProposed(
            long seed, RandomPlan plan, List<Entry> entries, Sheet sheet, Map<String, Optional<Proposal>> proposed) {
        for (Line line : sheet.lines()) {
            Iterator<Finding> found = line.earlier().iterator();
            for (Pass pass : line.passes()) {
                String which = line.step().number() + "/" + pass.number();
                if (pass.ended().isEmpty()) {
                    proposed.put(which, line.finding().proposal());
                } else if (!pass.isEmpty()) {
                    Optional<Proposal> now = found.next().proposal();
                    if (!proposed.get(which).equals(now)) {
                        wrong(
                                seed,
                                "after pass %s was proposed %s, and now it is said to have been %s"
                                        .formatted(which, proposed.get(which), now),
                                plan,
                                entries);
                    }
                }
            }
        }
    }

    /** What was added may belong to a step only while no hold point before it was shut. */
    private static void nothingBehindAShutHoldPoint(long seed, RandomPlan plan, List<Entry> before, List<Entry> after) {
        Oracle oracle = new Oracle(plan.facts(), before);
        for (Entry entry : after.subList(before.size(), after.size())) {
            int step = entry.event() instanceof StepEvent.ReadingTaken read
                    ? read.step()
                    : entry.event() instanceof StepEvent.TemperatureTaken taken
                            ? taken.step()
                            : entry.event() instanceof StepEvent.Answered answered
                                    ? answered.step()
                                    : entry.event() instanceof StepEvent.PassBegun begun
                                            ? begun.step()
                                            : entry.event() instanceof StepEvent.CutOnThese signed
                                                    ? signed.step()
                                                    : entry.event() instanceof StepEvent.DispositionSigned disposed
                                                            ? disposed.step()
                                                            : entry.event() instanceof StepEvent.DocumentGiven given
                                                                    ? given.step()
                                                                    : 0;
            if (step > 0 && !oracle.inRun(plan.facts(step))) {
                wrong(seed, "check %d is worked and not in the run".formatted(step), plan, after);
            }
            if (step > 0 && !oracle.waitingFor(plan.facts(step)).isEmpty()) {
                wrong(seed, "check %d is worked behind a shut hold point".formatted(step), plan, after);
            }
        }
    }

    private static void wrong(long seed, String what, RandomPlan plan, List<Entry> entries) {
        StringBuilder told = new StringBuilder("Seed %d: %s, and the oracle denies it.%n".formatted(seed, what));
        plan.facts().forEach(facts -> told.append(facts).append('\n'));
        entries.stream().skip(1).forEach(entry -> told.append(entry.seq())
                .append(' ')
                .append(entry.event())
                .append('\n'));
        fail(told.toString());
    }
}
