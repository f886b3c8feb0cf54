package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/**
 * A run in hand judges after an entry only what the entry touches. Over random runs, worked by a hand that does
 * anything at any time, that comes after every deed to the same as judging all of it from the first entry on. 150 runs;
 * {@code -Dhostile.seed} begins at the seed in the message.
 */
class JudgedAsItGrowsTest {

    private static final int MOST_DEEDS = 120;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private int struckOut;
    private int passesEnded;

    @Test
    void afterEveryDeedTheSheetInHandIsTheOneMadeOfAllEntries() throws Exception {
        int runs = 150;
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + runs; seed++) {
            run(seed);
        }
        assertTrue(struckOut > runs && passesEnded > runs, () -> struckOut + " struck out, " + passesEnded + " passes");
    }

    private void run(long seed) throws Exception {
        Random random = new Random(seed);
        RandomPlan plan = RandomPlan.of(random);
        MemoryLedger ledger = new MemoryLedger();
        Runs shop = new Runs(ledger, CLOCK);
        RunHeader header = new RunHeader(plan.plan(), "1", "L-1", "Lathe 4", "Setter 1");
        Hand hand = new Hand(plan, shop, shop.begin(header.begunFor(plan.occasion(random))), random);
        for (int deed = 0; deed < MOST_DEEDS; deed++) {
            hand.deed();
            Sheet inHand = hand.session().state().sheet();
            List<Entry> entries = ledger.entries(hand.session().id());
            assertEquals(entries, inHand.run().entries(), () -> "Seed " + seed);
            assertEquals(Sheet.of(inHand.plan(), new Run(entries)).lines(), inHand.lines(), () -> "Seed " + seed);
        }
        for (Entry entry : ledger.entries(hand.session().id())) {
            struckOut += entry.event() instanceof Event.StruckOut ? 1 : 0;
            passesEnded += entry.event() instanceof StepEvent.PassBegun ? 1 : 0;
        }
    }
}
