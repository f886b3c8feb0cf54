package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;

/**
 * What is said of the certificates of gauges, at any time and put right at any time: nothing read past a due day is
 * silent, no finding is another by it, and no signature that had lapsed holds again. 400 random runs;
 * {@code -Dhostile.seed} begins at the seed in the message.
 */
class CalibrationsOfRandomRunsTest {

    private static final int MOST_DEEDS = 90;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private int past;
    private int masterPast;
    private int lapsedByIt;

    @Test
    void whatWasReadPastADueDayIsNamedAndChangesNothingElse() throws Exception {
        int runs = Integer.getInteger("hostile.calibrated", 400);
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + runs; seed++) {
            run(seed);
        }
        assertTrue(
                past > runs / 4 && masterPast > runs / 100 && lapsedByIt > runs / 100,
                () -> "gauges %d, masters %d, signatures %d".formatted(past, masterPast, lapsedByIt));
    }

    private void run(long seed) throws Exception {
        Random random = new Random(seed);
        RandomPlan plan = RandomPlan.of(random);
        MemoryLedger ledger = new MemoryLedger();
        Runs shop = new Runs(ledger, CLOCK);
        Hand hand = new Hand(
                plan,
                shop,
                shop.begin(
                        new RunHeader(plan.plan(), "1", "L-1", "Lathe 4", "Setter 1").begunFor(plan.occasion(random))),
                random);
        List<Entry> before = ledger.entries(hand.session().id());
        for (int deed = 0; deed < MOST_DEEDS; deed++) {
            deed(hand, random);
            List<Entry> after = ledger.entries(hand.session().id());
            if (after.size() > before.size()) {
                noSignatureHoldsAgain(seed, before, after);
            }
            before = after;
        }
        Sheet sheet = hand.session().state().sheet();
        CalibrationOracle oracle = new CalibrationOracle(before);
        for (Line line : sheet.lines()) {
            TreeSet<String> due = oracle.pastAt(plan.facts(line.step().number()));
            assertEquals(due, named(GaugesUsed.pastDue(sheet, line)), () -> told(seed, line, sheet));
            past += due.isEmpty() ? 0 : 1;
            masterPast += due.stream().anyMatch(mark -> mark.startsWith("@")) ? 1 : 0;
        }
        List<Entry> without = before.stream()
                .filter(entry -> !(entry.event() instanceof ShopEvent.CalibrationKnown))
                .toList();
        Sheet unsaid = Sheet.of(plan.plan(), new Run(without));
        assertEquals(
                unsaid.lines().stream().map(Line::finding).toList(),
                sheet.lines().stream().map(Line::finding).toList(),
                () -> "Seed " + seed);
    }

    /** Signed and said of certificates more often than by a hand that has other things to do. */
    private static void deed(Hand hand, Random random) throws Exception {
        switch (random.nextInt(12)) {
            case 0 -> hand.session().sign("Inspector 1", SignedAs.ACCEPTED);
            case 1, 2 -> hand.calibration();
            default -> hand.deed();
        }
    }

    private static TreeSet<String> named(List<GaugesUsed.Used> used) {
        return used.stream()
                .map(one -> one.what().kind().isPresent()
                        ? one.what().mark()
                        : "@" + one.what().mark())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Those given before stay as they are or lapse, whatever comes after. */
    private void noSignatureHoldsAgain(long seed, List<Entry> before, List<Entry> after) {
        List<Signature> then = new Run(before).signatures();
        List<Signature> now = new Run(after).signatures();
        for (int i = 0; i < then.size(); i++) {
            Signature was = then.get(i);
            Signature is = now.get(i);
            assertEquals(was.entry(), is.entry(), () -> "Seed " + seed);
            assertTrue(is.lapsed() || !was.lapsed(), () -> "Seed " + seed + ": holds again " + is);
            boolean putRight = after.get(after.size() - 1).event() instanceof ShopEvent.CalibrationKnown known
                    && known.putsRight();
            assertTrue(is.lapsed() || !putRight, () -> "Seed " + seed + ": holds though put right " + is);
            lapsedByIt += putRight && !was.lapsed() ? 1 : 0;
        }
    }

    private static String told(long seed, Line line, Sheet sheet) {
        return "Seed " + seed + " check " + line.step().number() + "\n"
                + sheet.run().entries().stream()
                        .skip(1)
                        .map(entry -> entry.seq() + " " + entry.event())
                        .collect(Collectors.joining("\n"));
    }
}
