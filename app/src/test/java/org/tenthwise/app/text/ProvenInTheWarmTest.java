package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/**
 * What warmth may have moved a size by and nobody takes off comes out of the room inside a limit before the uncertainty
 * of the plan is set against what is left (ISO 14253-1: conformity is proven further inside than all that is not known
 * of the size; ISO 1: sizes are at 20 °C).
 *
 * <p>By hand: 100 mm of steel of 11.5e-6 at 30 °C under a gauge of the same at 20 °C reads 0.0115 too long, and no
 * corner of a shop from 20 °C to 30 °C is worse.
 */
class ProvenInTheWarmTest {

    private static Plan plan(String limits) {
        return InventedPlans.inMillimetres(
                """
                [[step]]
                number = 1
                operation = 10
                kind = "diameter"
                name = "Journal"
                method = "Micrometer."
                %s
                places = ["middle"]
                gauge_kind = "micrometer"
                gauge = "MC-1"
                uncertainty = "micrometer"

                [[uncertainty]]
                name = "micrometer"
                expanded = 0.002

                [temperature]
                part_expansion = 11.5
                gauge_expansion = 11.5
                shop_least = 20
                shop_greatest = 30
                """
                        .formatted(limits));
    }

    private static State read(String limits, String figure) throws Exception {
        RunSession session = new Runs(new MemoryLedger(), Clock.systemUTC())
                .begin(new RunHeader(plan(limits), "1", "", "", "Setter 2"));
        session.enter(figure);
        State state = session.state();
        assertTrue(state.line().finding().verdict().passed(), state.line().finding()::toString);
        return state;
    }

    private static BesideVerdict.Split split(String limits, String figure) throws Exception {
        State state = read(limits, figure);
        return new BesideVerdict(Words.ENGLISH).of(state.sheet(), state.line(), false);
    }

    private static boolean proven(String limits, String figure) throws Exception {
        BesideVerdict.Split split = split(limits, figure);
        return List.of(split.shown(), split.rest()).toString().contains("the pass is proven");
    }

    /** Inside by 0.010: more than the uncertainty of 0.002, less than warmth may make of it. */
    @Test
    void withOneLimitAPassThatWarmthCanTurnIsNotCalledProven() throws Exception {
        assertFalse(proven("upper = 100.000", "99.990"));
        assertFalse(proven("upper = 100.000", "99.9866"));
        assertTrue(proven("upper = 100.000", "99.986"));
    }

    /** A shop that is so warm is felt by no tolerance above 0.230; the limit is nearer than warmth and uncertainty. */
    @Test
    void whereWarmthDoesNotMatterInTheToleranceItStillComesOutOfTheRoom() throws Exception {
        assertFalse(proven("lower = 99.700\nupper = 100.000", "99.990"));
        assertTrue(proven("lower = 99.700\nupper = 100.000", "99.986"));
    }

    /**
     * Read 100.0036 at 25 °C, under a gauge at 20 °C, a journal is 100.0036 / 1.0000575 = 99.99785: 0.00215 inside. Its
     * expansion may be a tenth off, which is 100 · 5 · 1.15e-6 / √3 = 0.000332 as a standard uncertainty and 0.000664
     * at k = 2; with the 0.002 of the plan √(0.002² + 0.000664²) = 0.002107. Read 0.0001 more it is 0.00205 inside:
     * more than the 0.002, and not proven all the same.
     */
    @Test
    void howSureACorrectionIsBelongsToTheUncertainty() throws Exception {
        assertEquals(
                "Uncertainty 0.0022 mm, temperature correction included: the pass is proven.", corrected("100.0036"));
        assertEquals(
                "Uncertainty 0.0022 mm, temperature correction included: the limit is nearer than that.",
                corrected("100.0037"));
    }

    private static String corrected(String figure) throws Exception {
        String limits = "lower = 99.900\nupper = 100.000\ntemperature = \"ask\"";
        RunSession session = new Runs(new MemoryLedger(), Clock.systemUTC())
                .begin(new RunHeader(plan(limits), "1", "", "", "Setter 2"));
        for (String typed : List.of("25", "20", figure)) {
            session.enter(typed);
        }
        State state = session.state();
        assertTrue(state.line().finding().verdict().passed(), state.line().finding()::toString);
        return new BesideVerdict(Words.ENGLISH)
                .of(state.sheet(), state.line(), false).shown().stream()
                        .filter(said -> said.startsWith("Uncertainty"))
                        .findFirst()
                        .orElse("");
    }

    /** Whoever reads it warm takes a journal for large enough that is not, once it is cold. */
    @Test
    void whatCanTurnAPassStaysInSight() throws Exception {
        for (String limits :
                List.of("upper = 100.000", "lower = 99.900\nupper = 100.000\ntemperature = \"not-asked\"")) {
            List<String> shown = split(limits, "99.990").shown();
            assertEquals(
                    1,
                    shown.stream().filter(said -> said.contains("uncorrected")).count(),
                    shown::toString);
        }
        String heldOff = "lower = 99.900\nupper = 100.000\nguard_band = 0.003\ntemperature = \"not-asked\"";
        assertTrue(split(heldOff, "99.990").shown().stream().anyMatch(said -> said.contains("uncorrected")));
    }
}
