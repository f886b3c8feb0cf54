package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.record.PlugFitFinding.Contradiction;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A plug measured and felt, in a bore measured before. Wanted is a clearance of 0.005 to 0.035 and a plug that goes in
 * freely.
 */
class PlugFitFindingTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # plug,  felt,       verdict, contradiction    bore 30.010 and 30.014
        29.990,  FREELY,     PASS,
        29.990,  WITH_DRAG,  FAIL,
        29.990,  NOT_AT_ALL, UNPROVEN, STICKS_YET_MEASURES_CLEAR
        30.012,  NOT_AT_ALL, FAIL,
        30.012,  FREELY,     FAIL,
        30.020,  FREELY,     UNPROVEN, ENTERS_YET_MEASURES_TIGHT
        30.020,  WITH_DRAG,  UNPROVEN, ENTERS_YET_MEASURES_TIGHT
        30.020,  NOT_AT_ALL, FAIL,
        29.970,  FREELY,     FAIL,
        """)
    void handAndGaugesAreSetAgainstEachOther(
            String plug, Answer felt, VerdictKind standing, Contradiction contradiction) {
        PlugFitFinding found = found("30.010", "30.014", felt, plug);
        assertEquals(standing, found.verdict().standing());
        assertEquals(Optional.ofNullable(contradiction), found.contradiction());
        assertEquals(
                length("30.014").minus(length(plug)),
                found.clearance().orElseThrow().greatest());
        assertEquals(
                length("30.010").minus(length(plug)),
                found.clearance().orElseThrow().least());
    }

    /** Bore 20.002, plug 20.018: 0.016 of interference, and it is said to go in freely, as is wanted. */
    @Test
    void aPlugThatEntersThoughItMeasuresBiggerThanItsBoreDoesNotPass() {
        PlugFitFinding found = (PlugFitFinding) new Bench()
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 1))
                .step(plug(Limits.between(mm("-0.020"), mm("0.020")), 1))
                .read(1, "20.002")
                .read(2, "20.018")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .finding(2);
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.of(Contradiction.ENTERS_YET_MEASURES_TIGHT), found.contradiction());
    }

    /** Bore 20.000 at one place and 20.030 at the other, plug 20.016, and no clearance is too small for the plan. */
    @Test
    void aPlugThatGoesInFreelyDoesNotPassWhileOnePlaceMeasuresSmaller() {
        PlugFitFinding found = (PlugFitFinding) new Bench()
                .step(size(Feature.BORE, "20.000", "20.040", Combine.EACH, 2))
                .step(plug(Limits.atMost(mm("0.030")), 1))
                .read(1, "20.000", "20.030")
                .read(2, "20.016")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .finding(2);
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.of(Contradiction.ENTERS_YET_MEASURES_TIGHT), found.contradiction());
    }

    @Test
    void sizeForSizeContradictsNoHand() {
        assertEquals(
                Optional.empty(),
                found("30.010", "30.010", Answer.FREELY, "30.010").contradiction());
        assertEquals(
                Optional.empty(),
                found("30.010", "30.010", Answer.NOT_AT_ALL, "30.010").contradiction());
    }

    @Test
    void withoutTheFeelNothingPassesAndWhatIsOutFails() {
        assertEquals(
                VerdictKind.OPEN, unfelt("30.010", "30.014", "29.990").verdict().standing());
        assertEquals(
                VerdictKind.FAIL, unfelt("30.010", "30.014", "30.009").verdict().standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # bores,      plug 29.990,  verdict, distance, limit, inside
        30.010, 30.040, FAIL, 0.015, UPPER, false
        29.992, 30.010, FAIL, 0.003, LOWER, false
        29.985, 30.040, FAIL, 0.015, UPPER, false
        30.030, 30.045, FAIL, 0.020, UPPER, false
        29.996, 30.020, PASS, 0.001, LOWER, true
        30.010, 30.024, PASS, 0.001, UPPER, true
        29.980, 29.990, FAIL, 0.015, LOWER, false
        """)
    void theWorseEndOfTheClearanceDecides(
            String least, String greatest, VerdictKind standing, String distance, Limit limit, boolean inside) {
        Verdict verdict = found(least, greatest, Answer.FREELY, "29.990").verdict();
        assertEquals(standing, verdict.standing());
        assertEquals(Optional.of(new Verdict.Margin(length(distance), limit, inside)), verdict.margin());
    }

    @Test
    void whatIsMissingIsCountedAndTheFeelWithIt() {
        Bench bench = new Bench()
                .step(size(Feature.BORE, "30.000", "30.050", Combine.EACH, 1))
                .step(plug(Limits.atMost(mm("0.035")), 2))
                .read(1, "30.010");
        assertEquals(3, bench.finding(2).missing());
        bench.read(2, "29.990");
        assertEquals(2, bench.finding(2).missing());
        assertEquals(
                Optional.empty(), ((PlugFitFinding) bench.finding(2)).clearance(), "measured at one of two places");
        bench.read(2, "29.990", "29.991");
        assertEquals(1, bench.finding(2).missing());
        bench.did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY));
        assertEquals(0, bench.finding(2).missing());
    }

    @Test
    void aPlugWaitsForItsBore() {
        Finding found = new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 2))
                .step(plug(Limits.atMost(mm("0.035")), 1))
                .read(1, "30.010")
                .read(2, "29.990")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .finding(2);
        assertEquals(VerdictKind.OPEN, found.verdict().standing());
    }

    /**
     * 2.999 for 29.990: the clearance of 27 is more than is wanted at the least, and no limit stands on the other side.
     */
    @Test
    void aPlugTypedWithItsPointInTheWrongPlacePassesNothing() {
        PlugFitFinding found = (PlugFitFinding) new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1))
                .step(plug(new Limits(Optional.of(mm("0.005")), Optional.empty()), 1))
                .read(1, "30.010")
                .read(2, "2.999")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                .finding(2);
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(1, found.farOff().size());
    }

    @Test
    void aPlugIsNotSetAgainstABoreThatIsFarOff() {
        Bench bench = new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1))
                .step(plug(new Limits(Optional.of(mm("0.005")), Optional.empty()), 1))
                .read(1, "300.10")
                .read(2, "29.990")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY));
        assertEquals(VerdictKind.OPEN, bench.finding(2).verdict().standing());
        assertEquals(
                VerdictKind.PASS,
                bench.did(new Event.StruckOut(2, "point missed"))
                        .read(1, "30.010")
                        .read(2, "29.990")
                        .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY))
                        .finding(2)
                        .verdict()
                        .standing());
    }

    private static PlugFitFinding found(String least, String greatest, Answer felt, String plug) {
        return (PlugFitFinding) fit(least, greatest, plug)
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, felt))
                .finding(2);
    }

    private static PlugFitFinding unfelt(String least, String greatest, String plug) {
        return (PlugFitFinding) fit(least, greatest, plug).finding(2);
    }

    private static Bench fit(String least, String greatest, String plug) {
        return new Bench()
                .step(size(Feature.BORE, "29.900", "30.100", Combine.EACH, 2))
                .step(plug(Limits.between(mm("0.005"), mm("0.035")), 1))
                .read(1, least, greatest)
                .read(2, plug);
    }

    private static PlugFitCheck plug(Limits clearance, int places) {
        return new PlugFitCheck(1, clearance, places(places), PlugFeel.FREELY, with(GaugeKind.MICROMETER));
    }
}
