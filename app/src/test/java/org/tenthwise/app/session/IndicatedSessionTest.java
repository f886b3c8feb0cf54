package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.verdict.VerdictKind;

/** What an indicator shows over a sweep of two places, against 0.020. Figures by hand. */
class IndicatedSessionTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private RunSession session;

    private void begin(String of) throws Exception {
        begin(of, "centres");
    }

    private void begin(String of, String datumBy) throws Exception {
        String datum = of.equals("flatness") ? "" : "datum = \"A\"\ndatum_by = \"%s\"\n".formatted(datumBy);
        String plan =
                """
                [[step]]
                number = 1
                operation = 10
                kind = "indicated"
                movement_of = "%s"
                %slimit = 0.020
                name = "Movement"
                method = "Needle square to the surface."
                places = ["near", "far"]
                gauge_kind = "lever-indicator"
                """
                        .formatted(of, datum);
        session = new Runs(new MemoryLedger(), CLOCK)
                .begin(new RunHeader(InventedPlans.inMillimetres(plan), "1", "L-1", "Lathe 4", "Setter 1"));
        take("LI-1");
    }

    private void take(String gauge) throws Exception {
        session.gauge().choose(gauge, Optional.empty());
    }

    private void enter(String... figures) throws Exception {
        for (String figure : figures) {
            assertTrue(session.enter(figure).objection().isEmpty(), figure);
        }
    }

    private Finding finding() {
        return session.state().line().finding();
    }

    private Objection.Kind against(String figure) throws Exception {
        return session.enter(figure).objection().orElseThrow().kind();
    }

    private String asked() {
        return session.state()
                .asked()
                .asReading()
                .map(reading -> reading.slot().key())
                .orElse("");
    }

    /** The two gauges stand at whatever they were put to: what lies between them is nothing of the work. */
    @ParameterizedTest
    @ValueSource(strings = {"circular-run-out", "axial-run-out", "total-run-out", "flatness", "symmetry"})
    void aSweepBegunWithOneGaugeIsNotEndedWithAnother(String of) throws Exception {
        begin(of);
        enter("0.010");
        take("LI-2");
        enter("0.004");
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        assertEquals("1.1", asked());
        enter("0.009", "0.011", "0.003");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    @ParameterizedTest
    @ValueSource(strings = {"total-run-out", "squareness", "parallelism", "flatness"})
    void placesThatAreOneMovementAreReadWithOneGauge(String of) throws Exception {
        begin(of);
        enter("0.010", "0.002");
        take("LI-2");
        enter("0.009");
        assertEquals("1.1", asked());
        enter("0.008", "0.001", "0.000");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
        assertEquals(4, finding().measured().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"circular-run-out", "axial-run-out", "symmetry"})
    void placesThatAreJudgedOneByOneMayBeReadWithTwoGauges(String of) throws Exception {
        begin(of);
        enter("0.010", "0.002");
        take("LI-2");
        enter("0.509", "0.501");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    /** Nothing that is swept after it makes a movement smaller. */
    @ParameterizedTest
    @ValueSource(strings = {"circular-run-out", "total-run-out", "flatness", "symmetry"})
    void onePlaceThatIsOutSettlesIt(String of) throws Exception {
        begin(of);
        enter("0.030", "0.009");
        assertEquals(VerdictKind.FAIL, finding().verdict().standing());
        enter("0.012", "0.011");
        assertEquals(VerdictKind.FAIL, finding().verdict().standing());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"circular-run-out", "axial-run-out", "total-run-out", "squareness", "parallelism", "flatness"})
    void aLowestAboveItsHighestIsRefused(String of) throws Exception {
        begin(of);
        enter("0.004");
        assertEquals(Objection.Kind.WRONG_WAY_ROUND, against("0.005"));
        enter("0.003");
        session.strikeOut(highest(), "Typed wrong");
        assertEquals("1.1", asked());
        assertEquals(Objection.Kind.WRONG_WAY_ROUND, against("0.002"));
        enter("0.005");
        assertEquals("2.1", asked());
    }

    private long highest() {
        return session.state().pass().standing().get("1.1").entry().seq();
    }

    /** A needle that stands still may touch nothing: it is asked about, and taken on purpose. */
    @ParameterizedTest
    @ValueSource(
            strings = {"circular-run-out", "axial-run-out", "total-run-out", "squareness", "parallelism", "flatness"})
    void aNeedleThatStoodStillIsAskedAbout(String of) throws Exception {
        begin(of);
        enter("0.004");
        assertEquals(Objection.Kind.STOOD_STILL, against("0.004"));
        assertEquals(Objection.Kind.STOOD_STILL, against("0.0040"));
        assertEquals("1.2", asked());
        assertTrue(session.keep("0.004").objection().isEmpty());
        enter("0.005", "0.003");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    /**
     * One way up and turned over, either may be the higher; where they are the same the middle is where it should be.
     */
    @Test
    void aSymmetryReadsEitherWay() throws Exception {
        begin("symmetry");
        enter("0.004", "0.004", "0.002", "0.009");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    /** Jaws turn the part about themselves: what is in there may be out about its datum, and the other way round. */
    @ParameterizedTest
    @ValueSource(
            strings = {"circular-run-out", "axial-run-out", "total-run-out", "squareness", "parallelism", "symmetry"})
    void whatJawsHoldIsProvenNeitherInNorOut(String of) throws Exception {
        begin(of, "chuck");
        enter("0.003", "0.001", "0.004");
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        enter("0.002");
        assertEquals(VerdictKind.UNPROVEN, finding().verdict().standing());
        assertEquals(Outcome.NOT_COMPLETE, session.state().sheet().outcome());
        begin(of, "chuck");
        enter("0.040", "0.001");
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        enter("0.003", "0.001");
        assertEquals(VerdictKind.UNPROVEN, finding().verdict().standing());
    }

    @ParameterizedTest
    @ValueSource(strings = {"centres", "mandrel", "v-blocks", "same-chucking"})
    void whatTurnsAboutItsDatumProves(String datumBy) throws Exception {
        begin("circular-run-out", datumBy);
        enter("0.003", "0.001", "0.004", "0.002");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    /** Whoever takes it in hand again puts it to the work anew: what it showed before is nothing to go by. */
    @ParameterizedTest
    @ValueSource(strings = {"circular-run-out", "total-run-out", "flatness", "symmetry"})
    void aSweepBegunBeforeTheGaugeWasTakenAnewIsNotEndedWithIt(String of) throws Exception {
        begin(of);
        enter("0.010");
        take("LI-2");
        take("LI-1");
        enter("0.004");
        assertEquals("1.1", asked());
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        enter("0.009", "0.011", "0.003");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
    }

    @ParameterizedTest
    @ValueSource(strings = {"total-run-out", "flatness"})
    void placesThatAreOneMovementAreReadWithoutTakingTheGaugeAnew(String of) throws Exception {
        begin(of);
        enter("0.010", "0.002");
        take("LI-2");
        take("LI-1");
        enter("0.009");
        assertEquals("1.1", asked());
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
    }

    /** What the gauge showed before it was taken anew is no bound of what it shows now. */
    @Test
    void aHighestReadBeforeTheGaugeWasTakenAnewRefusesNothing() throws Exception {
        begin("circular-run-out");
        enter("0.010");
        take("LI-2");
        take("LI-1");
        enter("0.510", "0.512");
        assertEquals("2.1", asked());
    }
}
