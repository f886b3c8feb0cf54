package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * An invented bronze part, 16.2, under steel gauges, 11.5, in a shop of 18 to 25 °C. Figures by hand from the formula.
 */
class TemperatureEffectTest {

    private static final Check BORE = size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1);

    private static Bench bore() {
        return new Bench().in(Bench.BRONZE).step(BORE);
    }

    /** 30.0215 is above the upper limit; at 25 °C, gauge at 20: 30.0215/(1 + 81e-6) = 30.019068, inside by 0.001932. */
    @Test
    void theVerdictIsOnTheSizeAtTwentyDegreesAndAllThreeAreKept() {
        SizeFinding found =
                (SizeFinding) bore().at(1, "25", "20").read(1, "30.0215").finding(1);
        assertEquals(VerdictKind.PASS, found.verdict().standing());
        Measured measured = found.measured().get(0);
        assertEquals(length("30.0215"), measured.raw());
        assertEquals(length("-0.002432"), measured.correction());
        assertEquals(Optional.of(length("-0.002432")), measured.forTemperature());
        assertEquals(Optional.of(length("30.019068")), found.value());
    }

    /**
     * 30.0195 as read; gauge at 25 and part at 18 °C: 30.0195·(1 + 57.5e-6)/(1 − 32.4e-6) = 30.022199, out by 0.001199.
     */
    @Test
    void aColdPartUnderAWarmGaugeIsLargerThanItReads() {
        Finding found = bore().at(1, "18", "25").read(1, "30.0195").finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(length("0.001199"), found.verdict().margin().orElseThrow().distance());
    }

    /**
     * A part read at 35 °C, corrected to 21 °C, and that struck out: the 35 °C of before would bring 30.0275 to size.
     */
    @Test
    void aTemperatureThatWasReplacedDoesNotComeBackWhenTheOneInItsPlaceIsStruckOut() {
        Bench bench = bore().at(1, "35", "20")
                .did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("21", CELSIUS)))
                .read(1, "30.0275");
        assertEquals(VerdictKind.FAIL, bench.finding(1).verdict().standing());
        bench.did(new Event.StruckOut(4, "wrong part"));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(
                Optional.of(MeasuredBody.PART),
                bench.finding(1).warmth().orElseThrow().wanted());
        assertEquals(
                VerdictKind.PASS,
                bench.did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("35", CELSIUS)))
                        .finding(1)
                        .verdict()
                        .standing());
    }

    @Test
    void withoutBothTemperaturesNothingIsCorrectedAndTheCheckStaysOpenHoweverFarOutItReads() {
        SizeFinding found = (SizeFinding) bore().read(1, "29.5").finding(1);
        assertEquals(VerdictKind.OPEN, found.verdict().standing());
        assertEquals(Optional.of(length("29.5")), found.value());
        assertEquals(Optional.empty(), found.proposal());
        assertEquals(2, found.missing());
        assertEquals(
                Optional.of(MeasuredBody.PART), found.warmth().orElseThrow().wanted());
        Finding half = bore().read(1, "29.5")
                .did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("22", CELSIUS)))
                .finding(1);
        assertEquals(VerdictKind.OPEN, half.verdict().standing());
        assertEquals(
                Optional.of(MeasuredBody.GAUGE), half.warmth().orElseThrow().wanted());
        assertEquals(1, half.missing());
    }

    @Test
    void theLatestTemperatureCountsAndOneStruckOutDoesNot() {
        Bench bench = bore().at(1, "21", "20").at(1, "22", "21");
        assertEquals(
                Optional.of(Degrees.of("22", CELSIUS)),
                bench.finding(1).warmth().orElseThrow().part());
        bench.did(new Event.StruckOut(4, "hand on the thermometer"));
        assertEquals(
                Optional.empty(),
                bench.finding(1).warmth().orElseThrow().part(),
                "the 21 °C it took the place of stay replaced");
        assertEquals(1, bench.sheet().line(1).passes().get(0).struckOut().count());
    }

    @Test
    void anotherPassNeedsItsOwnTemperatures() {
        Bench bench = bore().at(1, "22", "21")
                .read(1, "29.9")
                .did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .read(1, "30.01");
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(
                VerdictKind.CUT_AGAIN,
                bench.sheet().line(1).earlier().get(0).verdict().standing());
    }

    /** 30.1·(5·16.2 + 2·11.5)e-6 ≈ 0.0031, and a twentieth of 0.1 is 0.005. */
    @Test
    void whereItDoesNotMatterNothingIsAskedAndNothingCorrected() {
        Bench bench = new Bench()
                .in(Bench.BRONZE)
                .step(size(Feature.BORE, "30.0", "30.1", Combine.EACH, 1))
                .read(1, "30.05");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
        TemperatureEffect warmth = bench.finding(1).warmth().orElseThrow();
        assertFalse(warmth.matters());
        assertEquals(0, warmth.missing());
        bench.at(1, "25", "20");
        assertEquals(Optional.of(length("30.05")), ((SizeFinding) bench.finding(1)).value());
    }

    @Test
    void aPlanMayLeaveItUnasked() {
        Finding found = new Bench()
                .in(Bench.BRONZE)
                .stepNotAsking(BORE)
                .read(1, "30.01")
                .finding(1);
        assertTrue(found.warmth().orElseThrow().matters());
        assertFalse(found.warmth().orElseThrow().needed());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    @Test
    void whetherAStepNeedsTemperaturesIsKnownBeforeAnythingIsRead() {
        Sheet sheet = bore().stepNotAsking(BORE)
                .step(new AskedCheck.Confirm("a"), TemperatureAsked.ALWAYS)
                .sheet();
        assertEquals(
                List.of(true, false, false),
                sheet.lines().stream()
                        .map(line -> TemperatureEffect.isNeeded(sheet.plan(), line.step()))
                        .toList());
    }

    @Test
    void oneLimitHasNoToleranceToSetItAgainst() {
        Check atLeast = new SizeCheck(
                Feature.BORE,
                new Limits(Optional.of(mm("30")), Optional.empty()),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0"),
                with(GaugeKind.CALIPER));
        assertFalse(new Bench()
                .in(Bench.BRONZE)
                .step(atLeast)
                .finding(1)
                .warmth()
                .orElseThrow()
                .needed());
    }

    /**
     * 30 mm of bronze: where the plan says ask, one limit and a wide tolerance are asked for as well, and waited for.
     */
    @Test
    void whatThePlanAlwaysAsksForIsAskedForWhateverTheWidth() {
        Check atLeast = new SizeCheck(
                Feature.BORE,
                new Limits(Optional.of(mm("30")), Optional.empty()),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0"),
                with(GaugeKind.CALIPER));
        for (Check check : List.of(atLeast, size(Feature.BORE, "30", "31", Combine.EACH, 1))) {
            Bench bench = new Bench()
                    .in(Bench.BRONZE)
                    .step(check, TemperatureAsked.ALWAYS)
                    .read(1, "30.001");
            assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
            assertEquals(2, bench.finding(1).missing());
            bench.at(1, "25", "20");
            assertFalse(bench.finding(1).verdict().passed(), "30.001 at 25 °C is 29.998569 at 20 °C");
            assertTrue(bench.finding(1).warmth().orElseThrow().correction().isPresent());
        }
    }

    @Test
    void temperaturesOfAThreadAreCountedAsMissing() {
        ScrewThread thread = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);
        Bench bench = new Bench()
                .in(Bench.BRONZE)
                .step(new OverWiresCheck(
                        thread,
                        Limits.between(mm("18.2"), mm("18.21")),
                        Optional.empty(),
                        Optional.empty(),
                        places(1),
                        1,
                        Combine.EACH,
                        false,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)));
        assertEquals(3, bench.finding(1).missing());
        bench.did(new StepEvent.GaugeSet(1, Bench.wires("1.443"))).read(1, "20.400");
        assertEquals(2, bench.finding(1).missing());
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
    }

    @Test
    void aRangeOfReadingsAndAPlanWithoutHeatHaveNothingToDoWithIt() {
        assertEquals(
                Optional.empty(),
                new Bench()
                        .in(Bench.BRONZE)
                        .step(size(Feature.BORE, "0", "0.01", Combine.RANGE, 2))
                        .finding(1)
                        .warmth());
        assertEquals(Optional.empty(), new Bench().step(BORE).finding(1).warmth());
        assertEquals(
                Optional.empty(),
                new Bench()
                        .in(Bench.BRONZE)
                        .step(new AskedCheck.Confirm("a"))
                        .finding(1)
                        .warmth());
    }

    /** A bore of 30.010 read at 25 °C with a gauge at 20 is 30.007569; a plug of 29.990 leaves 0.017569. */
    @Test
    void aPlugIsSetAgainstTheBoreAtTwentyDegreesAndWaitsForItsTemperatures() {
        Check plug = new PlugFitCheck(
                1, Limits.between(mm("0.005"), mm("0.035")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER));
        Bench bench = bore().step(plug)
                .read(1, "30.010")
                .read(2, "29.990")
                .did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY));
        assertEquals(VerdictKind.OPEN, bench.finding(2).verdict().standing());
        bench.at(1, "25", "20").read(2, "29.990").did(new StepEvent.Answered(2, Question.PLUG_FEELS, Answer.FREELY));
        assertEquals(
                length("0.017569"),
                ((PlugFitFinding) bench.finding(2)).clearance().orElseThrow().greatest());
    }

    /**
     * 60° thread, to first order: d2 = M + 0.866 P − 3 W, so with reading and wires both seen from the part at 20 °C
     * its change is (M − 3 W)·(57.5 − 129.6)e-6 for the gauge at 25 and the part at 28 °C: 16.071·−72.1e-6 = −0.001159.
     */
    @Test
    void wiresGrowWithTheGaugeAndTheThreadWithThePart() {
        ScrewThread thread = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);
        Check wires = new OverWiresCheck(
                thread,
                Limits.between(mm("18.2"), mm("18.21")),
                Optional.empty(),
                Optional.empty(),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
        Bench bench = new Bench()
                .in(Bench.BRONZE)
                .step(wires)
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, "20.400");
        Length asRead = ((OverWiresFinding) bench.finding(1)).value().orElseThrow();
        OverWiresFinding found = (OverWiresFinding) bench.at(1, "28", "25").finding(1);
        Length change = found.value().orElseThrow().minus(asRead);
        assertTrue(!change.minus(length("-0.001159")).abs().isAbove(length("0.000003")), change::toString);
        assertEquals(
                List.of(Optional.of(change)),
                found.measured().stream().map(Measured::forTemperature).toList());
    }
}
