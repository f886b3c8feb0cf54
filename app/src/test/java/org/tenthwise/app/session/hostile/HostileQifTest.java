package org.tenthwise.app.session.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.qif.QifFile;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;

/**
 * Whatever is done in whatever plan, the QIF results of it are sound, and nothing in them passes that did not. 20 runs,
 * or a tenth of {@code -Dhostile.runs}; the seed of one that went wrong is in the message.
 */
class HostileQifTest {

    private static final int MOST_DEEDS = 70;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private final Set<String> statuses = new TreeSet<>();

    @Test
    void theResultsOfAnyRunAreSoundAndPassNothingThatDidNot() throws Exception {
        int runs = Math.max(20, Integer.getInteger("hostile.runs", 200) / 10);
        long first = Long.getLong("hostile.seed", new Random().nextLong(1_000_000_000L));
        for (long seed = first; seed < first + runs; seed++) {
            run(seed);
        }
        assertTrue(statuses.containsAll(Set.of("PASS", "FAIL", "NOT_ANALYZED")), () -> "only these came: " + statuses);
    }

    private void run(long seed) throws Exception {
        Random random = new Random(seed);
        RandomPlan plan = RandomPlan.of(random);
        MemoryLedger ledger = new MemoryLedger();
        Runs shop = new Runs(ledger, CLOCK);
        RunSession session = shop.begin(
                new RunHeader(plan.plan(), "1", "L-1", "Lathe 4", "Setter 1").begunFor(plan.occasion(random)));
        Hand hand = new Hand(plan, shop, session, random);
        for (int deed = 0; deed < MOST_DEEDS; deed++) {
            hand.deed();
        }
        Evidence evidence = Evidence.of(ledger, session.id(), "0.1.0");
        QifFile file = QifFile.of(evidence);
        assertEquals(List.of(), file.faults(), () -> "seed " + seed);
        statuses.addAll(file.all("//CharacteristicMeasurements/*/Status/CharacteristicStatusEnum"));
        for (Line line : evidence.sheet().lines()) {
            List<String> found = file.all("//CharacteristicMeasurements/*[CharacteristicItemId=//CharacteristicItems/*"
                    + "[CharacteristicNominalId=//CharacteristicNominals/*[CharacteristicDefinitionId="
                    + "//CharacteristicDefinitions/*[Attributes/AttributeStr[@name='step' and @value='%d']]/@id]/@id]"
                            .formatted(line.step().number())
                    + "/@id]/Status/CharacteristicStatusEnum");
            boolean passed = line.asked() && line.finding().verdict().passed();
            boolean said = !found.isEmpty() && found.stream().allMatch("PASS"::equals);
            assertEquals(line.isOfDrawing() && passed && !found.isEmpty(), said, () -> "seed %d, step %d: %s"
                    .formatted(seed, line.step().number(), found));
        }
        assertEquals(
                evidence.sheet().outcome() == Outcome.CONFORMS
                        && evidence.sheet().against().isEmpty(),
                file.at("//InspectionStatus/InspectionStatusEnum").equals("PASS"),
                () -> "seed " + seed);
    }
}
