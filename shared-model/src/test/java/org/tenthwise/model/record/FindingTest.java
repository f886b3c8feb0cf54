package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.runOut;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roundness.Refusal;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Feel;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Standing;

/** Figures by hand from the limits beside them. */
class FindingTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
        # combine, first,  second, verdict,   value    bore 30.000 to 30.021; too small can be cut again
        EACH,      30.010, 30.012, PASS,      30.012
        EACH,      30.000, 30.012, PASS,      30.000
        EACH,      29.990, 30.012, CUT_AGAIN, 29.990
        EACH,      29.980, 30.022, FAIL,      30.022
        MEAN,      30.010, 30.012, PASS,      30.011
        MEAN,      29.980, 30.010, CUT_AGAIN, 29.995
        LARGEST,   29.980, 30.010, PASS,      30.010
        SMALLEST,  29.980, 30.010, CUT_AGAIN, 29.980
        """)
    void twoReadingsBecomeTheSizeThatIsJudged(Combine combine, String first, String second, Standing standing, String value) {
        SizeFinding found = (SizeFinding) new Bench().step(size(Feature.BORE, "30.000", "30.021", combine, 2))
                .read(1, first, second).finding(1);
        assertEquals(standing, found.verdict().standing());
        assertEquals(Optional.of(length(value)), found.value());
    }

    @Test
    void aRangeIsLargestLessSmallest() {
        SizeFinding found = (SizeFinding) new Bench().step(size(Feature.WIDTH, "0", "0.010", Combine.RANGE, 3))
                .read(1, "12.010", "12.021", "12.015").finding(1);
        assertEquals(Optional.of(length("0.011")), found.value());
        assertEquals(Standing.FAIL, found.verdict().standing());
    }

    @Test
    void whereEachMustBeInsideOneThatIsOutSettlesIt() {
        Bench bench = new Bench().step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 4)).read(1, "30.022");
        assertEquals(Standing.FAIL, bench.finding(1).verdict().standing());
        assertEquals(3, bench.finding(1).missing());
    }

    @Test
    void otherwiseACheckIsOpenUntilItsLastReading() {
        for (Combine combine : List.of(Combine.MEAN, Combine.LARGEST, Combine.SMALLEST, Combine.EACH)) {
            Bench bench = new Bench().step(size(Feature.BORE, "30.000", "30.021", combine, 2)).read(1, "30.010");
            assertEquals(Standing.OPEN, bench.finding(1).verdict().standing(), combine.toString());
        }
    }

    @Test
    void theNextCutBringsTheMiddleOfTheReadingsToTheMiddleOfTheLimits() {
        SizeFinding found = (SizeFinding) new Bench().step(size(Feature.BORE, "30.000", "30.020", Combine.EACH, 2))
                .read(1, "29.960", "29.970").finding(1);
        // middle of readings 29.965, of limits 30.010
        assertEquals(length("0.045"), found.next().orElseThrow().changeOnDiameter());
    }

    @Test
    void aMovementOverTheLimitFailsBeforeTheLastReading() {
        Bench bench = new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")).read(1, "0", "0.021");
        assertEquals(Standing.FAIL, bench.finding(1).verdict().standing());
    }

    @Test
    void aRunOutWithoutACircleIsStillJudged() {
        RunOutFinding found = (RunOutFinding) new Bench().step(runOut("0.020", 4, "0", "90"))
                .read(1, "0", "0.020").finding(1);
        assertEquals(Optional.of(Refusal.FEWER_THAN_THREE_ANGLES), found.refusal());
        assertTrue(found.jawMoves().isEmpty());
        assertEquals(Standing.PASS, found.verdict().standing());
    }

    @Test
    void highestAndLowestOverATurnAreEnoughForTheVerdict() {
        RunOutFinding found = (RunOutFinding) new Bench().step(runOut("0.020", 4, "0", "90", "180", "270"))
                .did(new Event.ReadingTaken(1, Check.RunOut.LOWEST, mm("-0.008")))
                .did(new Event.ReadingTaken(1, Check.RunOut.HIGHEST, mm("0.014"))).finding(1);
        assertTrue(found.swept());
        assertEquals(Optional.of(length("0.022")), found.movement());
        assertEquals(Standing.FAIL, found.verdict().standing());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        # plug,  felt,       verdict, contradiction    bore 30.010 and 30.014; wanted clearance 0.005 to 0.035, freely
        29.990,  FREELY,     PASS,
        29.990,  WITH_DRAG,  FAIL,
        29.990,  NOT_AT_ALL, FAIL,    STICKS_YET_MEASURES_CLEAR
        30.012,  NOT_AT_ALL, FAIL,
        30.012,  FREELY,     FAIL,
        30.020,  FREELY,     FAIL,    ENTERS_YET_MEASURES_TIGHT
        30.020,  NOT_AT_ALL, FAIL,
        29.970,  FREELY,     FAIL,
        """)
    void handAndGaugesAreSetAgainstEachOther(String plug, Answer felt, Standing standing,
                                             PlugFinding.Contradiction contradiction) {
        PlugFinding found = plugFit(felt, plug);
        assertEquals(standing, found.verdict().standing());
        assertEquals(Optional.ofNullable(contradiction), found.contradiction());
        assertEquals(length("30.014").minus(length(plug)), found.clearance().orElseThrow().greatest());
        assertEquals(length("30.010").minus(length(plug)), found.clearance().orElseThrow().least());
    }

    private static PlugFinding plugFit(Answer felt, String plug) {
        return (PlugFinding) new Bench().step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 2))
                .step(new Check.PlugFit(1, Limits.between(mm("0.005"), mm("0.035")), places(1), Feel.FREELY,
                        with(GaugeKind.MICROMETER)))
                .read(1, "30.010", "30.014").read(2, plug)
                .did(new Event.Answered(2, Question.PLUG_FEELS, felt)).finding(2);
    }

    @Test
    void aPlugWaitsForItsBore() {
        Finding found = new Bench().step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1))
                .step(new Check.PlugFit(1, Limits.atMost(mm("0.035")), places(1), Feel.FREELY, with(GaugeKind.MICROMETER)))
                .read(2, "29.990").did(new Event.Answered(2, Question.PLUG_FEELS, Answer.FREELY)).finding(2);
        assertEquals(Standing.OPEN, found.verdict().standing());
    }

    /**
     * A best-size wire for full-depth 29° threads (0.51645 pitch) on 1 1/2-4 Stub Acme with its root at basic: by geometry
     * the wire reaches 0.1936 pitch below the pitch line, the root is only 0.15 pitch deep, so it bottoms.
     */
    @Test
    void aWireOnTheRootLeavesThePitchDiameterUnproven() {
        WiresFinding found = wires(Optional.of("34.290"), Optional.empty());
        assertTrue(found.bottoms());
        assertEquals(Standing.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.empty(), found.next());
    }

    @Test
    void aMinorDiameterAsMeasuredGoesBeforeTheOneOfThePlan() {
        assertFalse(wires(Optional.of("34.290"), Optional.of("32.000")).bottoms());
        assertTrue(wires(Optional.of("32.000"), Optional.of("34.290")).bottoms());
        assertFalse(wires(Optional.empty(), Optional.empty()).bottoms());
    }

    private static WiresFinding wires(Optional<String> planned, Optional<String> measured) {
        ScrewThread thread = new ScrewThread(ThreadForm.STUB_ACME, length("38.1"), length("6.35"), 1);
        Bench bench = new Bench().step(size(Feature.DIAMETER, "20", "40", Combine.EACH, 1))
                .step(new Check.OverWires(thread, Limits.between(mm("36.0"), mm("36.3")), planned.map(Bench::mm),
                        measured.map(m -> 1), places(1), 1, Combine.EACH, true, mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)));
        measured.ifPresent(m -> bench.read(1, m));
        return (WiresFinding) bench.did(new Event.GaugeSet(2, Bench.wires("3.280"))).read(2, "40.280").finding(2);
    }

    @Test
    void goMustEnterAndNotGoMustNot() {
        Check check = new Check.GoNotGo("goes", "does not", Optional.empty());
        assertEquals(Standing.OPEN, answered(check, Answer.YES).verdict().standing());
        assertEquals(Standing.FAIL, answered(check, Answer.NO).verdict().standing());
        assertEquals(Standing.PASS, answered(check, Answer.YES, Answer.NO).verdict().standing());
        assertEquals(Standing.FAIL, answered(check, Answer.YES, Answer.YES).verdict().standing());
    }

    private static Finding answered(Check check, Answer... answers) {
        Bench bench = new Bench().step(check);
        for (int i = 0; i < answers.length; i++) {
            bench.did(new Event.Answered(1, check.questions().get(i), answers[i]));
        }
        return bench.finding(1);
    }

    @Test
    void aStruckOutReadingDoesNotCountAndAnEarlierPassIsKept() {
        Bench bench = new Bench().step(size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1)).read(1, "48.032");
        bench.did(new Event.PassBegun(1, Event.PassBegun.Why.CUT)).read(1, "47.99");
        bench.did(new Event.StruckOut(4, "wrong gauge"));
        Line line = bench.sheet().line(1);
        assertEquals(Standing.OPEN, line.finding().verdict().standing());
        assertEquals(Standing.CUT_AGAIN, line.earlier().get(0).verdict().standing());
        assertEquals(1, line.passes().get(1).readings().size());
    }

    @Test
    void nothingAfterAHoldPointIsOpenBeforeItPassesOrIsCarriedOn() {
        Bench bench = new Bench().step(new Check.Confirm("a")).step(new Check.Confirm("b"), 1, 2).step(new Check.Confirm("c"));
        assertEquals(List.of(1, 2), bench.sheet().line(3).waitingFor());
        bench.did(new Event.Answered(1, Question.CONFIRMED, Answer.YES));
        bench.did(new Event.Answered(2, Question.CONFIRMED, Answer.NO));
        assertEquals(List.of(2), bench.sheet().line(3).waitingFor());
        bench.did(new Event.Disposed(2, Disposition.CARRY_ON, "will do", "Foreman 1"));
        assertFalse(bench.sheet().line(3).held());
        bench.did(new Event.PassBegun(2, Event.PassBegun.Why.MEASURED_AGAIN));
        assertTrue(bench.sheet().line(3).held());
    }
}
