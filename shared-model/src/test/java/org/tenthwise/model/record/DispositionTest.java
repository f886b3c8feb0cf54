package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** What was signed for one finding says nothing of another. */
class DispositionTest {

    private static final int BORE = 1;
    private static final int AFTER = 2;

    private final Bench bench = new Bench();

    @BeforeEach
    void aBoreOverSizeThatIsAHoldPoint() {
        bench.step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1), BORE)
                .step(new AskedCheck.Confirm("b"))
                .read(BORE, "20.023");
    }

    /** Rework makes it conform and scrap lets it go: neither is used though not to the drawing. */
    @ParameterizedTest
    @EnumSource(Disposition.class)
    void whatIsUsedThoughNotToTheDrawingDepartsFromIt(Disposition disposition) {
        assertEquals(
                disposition == Disposition.REPAIR || disposition == Disposition.USE_AS_IS,
                disposition.departsFromTheDrawing());
    }

    @Test
    void aConcessionOpensTheHoldPointAndIsCounted() {
        sign(Disposition.USE_AS_IS);
        assertTrue(line().conceded());
        assertTrue(line().settled());
        assertFalse(bench.sheet().line(AFTER).held());
        assertEquals(1, bench.sheet().concessions());
    }

    @Test
    void aReadingStruckOutMakesTheConcessionLapseAndShutsTheHoldPoint() {
        sign(Disposition.USE_AS_IS);
        bench.did(new Event.StruckOut(2, "misread"));
        assertLapsed();
        bench.read(BORE, "22.000");
        assertEquals(VerdictKind.FAIL, line().finding().verdict().standing());
        assertLapsed();
        Disposing signed = line().lapsed().orElseThrow();
        assertEquals(3, signed.entry().seq());
        assertEquals(4, signed.lapsed().orElseThrow().seq());
    }

    @Test
    void aReadingTakenAgainMakesItLapse() {
        sign(Disposition.USE_AS_IS);
        bench.read(BORE, "22.000");
        assertLapsed();
    }

    @Test
    void aNewPassMakesItLapse() {
        sign(Disposition.USE_AS_IS);
        bench.did(new StepEvent.PassBegun(BORE, Why.MEASURED_AGAIN));
        assertLapsed();
    }

    @Test
    void aTemperatureTakenLaterMakesItLapse() {
        sign(Disposition.USE_AS_IS);
        bench.at(BORE, "24", "20");
        assertLapsed();
    }

    @Test
    void aSettingStruckOutMakesItLapse() {
        Bench set = new Bench()
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1))
                .did(new StepEvent.GaugeSet(
                        BORE, Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()))))
                .read(BORE, "20.023")
                .did(new StepEvent.DispositionSigned(BORE, Disposition.USE_AS_IS, "will do", "Inspector 1"))
                .did(new Event.StruckOut(2, "set wrongly"));
        assertFalse(set.sheet().line(BORE).settled());
    }

    @Test
    void aNoteADoubtAndAnotherStepDoNot() {
        sign(Disposition.USE_AS_IS);
        bench.did(new StepEvent.NoteMade(BORE, "n"))
                .did(new StepEvent.DoubtFlagged(BORE, "d"))
                .did(new StepEvent.Answered(AFTER, Question.CONFIRMED, Answer.YES));
        assertTrue(line().settled());
        assertEquals(Optional.empty(), line().lapsed());
    }

    @Test
    void theNextSignatureTakesThePlaceOfTheOneBefore() {
        sign(Disposition.SCRAP);
        sign(Disposition.USE_AS_IS);
        assertEquals(
                List.of(false, true),
                line().dispositions().stream().map(Disposing::inForce).toList());
        assertFalse(bench.sheet().scrapped());
        sign(Disposition.SCRAP);
        assertTrue(bench.sheet().scrapped());
        assertFalse(line().settled());
    }

    @Test
    void ofSeveralThatLapsedTheOneSignedLastIsTold() {
        sign(Disposition.SCRAP);
        sign(Disposition.USE_AS_IS);
        bench.read(BORE, "22.000");
        assertEquals(
                Disposition.USE_AS_IS, line().lapsed().orElseThrow().disposed().disposition());
        assertEquals(5, line().lapsed().orElseThrow().lapsed().orElseThrow().seq());
    }

    @Test
    void afterReworkTheCheckIsOpenUntilItIsMeasuredAnew() {
        sign(Disposition.REWORK);
        assertEquals(VerdictKind.OPEN, line().finding().verdict().standing());
        assertEquals(1, line().finding().missing());
        assertEquals(Optional.of(Why.REWORKED), line().pass().why());
        assertEquals(VerdictKind.FAIL, line().earlier().get(0).verdict().standing());
        assertEquals(Disposition.REWORK, line().disposed().orElseThrow().disposition());
        assertFalse(line().settled());

        bench.read(BORE, "20.010");
        assertEquals(VerdictKind.PASS, line().finding().verdict().standing());
        assertEquals(Optional.empty(), line().disposed());
    }

    @Test
    void whatPassesAfterARepairIsSettledAndCountsAmongTheConcessions() {
        sign(Disposition.REPAIR);
        assertEquals(VerdictKind.OPEN, line().finding().verdict().standing());
        assertEquals(Optional.of(Why.REPAIRED), line().pass().why());
        assertTrue(bench.sheet().line(AFTER).held());
        assertEquals(0, bench.sheet().concessions());

        bench.read(BORE, "20.010").did(new StepEvent.Answered(AFTER, Question.CONFIRMED, Answer.YES));
        assertEquals(VerdictKind.PASS, line().finding().verdict().standing());
        assertTrue(line().settled());
        assertFalse(bench.sheet().line(AFTER).held());
        assertEquals(1, bench.sheet().repaired());
        assertEquals(1, bench.sheet().concessions());
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, bench.sheet().outcome());
        assertFalse(bench.sheet().conformsUncontested());
    }

    @Test
    void aRepairIsNeverUndoneByWhatComesAfter() {
        sign(Disposition.REPAIR);
        bench.read(BORE, "20.010").did(new StepEvent.Answered(AFTER, Question.CONFIRMED, Answer.YES));
        sign(Disposition.REWORK);
        bench.read(BORE, "20.011").did(new StepEvent.PassBegun(BORE, Why.CUT)).read(BORE, "20.012");
        assertEquals(VerdictKind.PASS, line().finding().verdict().standing());
        assertTrue(line().repaired());
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, bench.sheet().outcome());
    }

    @Test
    void whatIsStillOutAfterARepairFailsUntilItIsConcededAndCountsOnce() {
        sign(Disposition.REPAIR);
        bench.read(BORE, "20.030").did(new StepEvent.Answered(AFTER, Question.CONFIRMED, Answer.YES));
        assertEquals(Outcome.DOES_NOT_CONFORM, bench.sheet().outcome());
        assertEquals(0, bench.sheet().concessions());
        sign(Disposition.USE_AS_IS);
        assertEquals(1, bench.sheet().concessions());
        assertEquals(0, bench.sheet().repaired());
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, bench.sheet().outcome());
    }

    @Test
    void aRepairOfTheBoreOpensItsPlugWhichIsNoConcessionForThat() {
        Bench plug = new Bench()
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1))
                .step(new PlugFitCheck(
                        BORE, Limits.atMost(mm("0.020")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER)))
                .read(BORE, "20.019")
                .read(2, "20.000")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .did(new StepEvent.DispositionSigned(
                        BORE, Disposition.REPAIR, "sleeved", "Design office", Optional.of("A-1")));
        assertEquals(VerdictKind.OPEN, plug.sheet().line(2).finding().verdict().standing());
        plug.read(BORE, "20.019").read(2, "20.000").did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY));
        assertFalse(plug.sheet().line(2).byConcession());
        assertEquals(1, plug.sheet().concessions());
    }

    @Test
    void aConcessionOnWhatIsNotFoundOutSettlesNothing() {
        Bench open = new Bench()
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1), BORE)
                .step(new AskedCheck.Confirm("b"))
                .did(new StepEvent.DispositionSigned(BORE, Disposition.USE_AS_IS, "will do", "Inspector 1"));
        assertFalse(open.sheet().line(BORE).settled());
        assertTrue(open.sheet().line(AFTER).held());
        assertEquals(0, open.sheet().concessions());
    }

    @Test
    void aConcessionOnAPlugLapsesWithItsBore() {
        Bench plug = new Bench()
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1))
                .step(new PlugFitCheck(
                        BORE, Limits.atMost(mm("0.020")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER)))
                .read(BORE, "20.021")
                .read(2, "20.000")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .did(new StepEvent.DispositionSigned(2, Disposition.USE_AS_IS, "will do", "Inspector 1"));
        assertTrue(plug.sheet().line(2).settled());
        plug.did(new StepEvent.PassBegun(BORE, Why.CUT));
        assertFalse(plug.sheet().line(2).settled());
        assertTrue(plug.sheet().line(2).lapsed().isPresent());
    }

    private void sign(Disposition disposition) {
        bench.did(new StepEvent.DispositionSigned(BORE, disposition, "will do", "Inspector 1"));
    }

    private void assertLapsed() {
        assertEquals(Optional.empty(), line().disposed());
        assertTrue(line().lapsed().isPresent());
        assertFalse(line().settled());
        assertTrue(bench.sheet().line(AFTER).held());
        assertEquals(0, bench.sheet().concessions());
    }

    private Line line() {
        return bench.sheet().line(BORE);
    }
}
