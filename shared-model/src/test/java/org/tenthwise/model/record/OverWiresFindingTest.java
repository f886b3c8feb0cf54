package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.RootClearance;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A thread over wires, and whether the wires lie on its flanks.
 *
 * <p>1 1/2-4 Stub Acme over its best wire, 0.51645 pitch: by geometry the wire reaches 0.1936 pitch below the pitch
 * line and the basic root is only 0.15 pitch deep. Over 3.280 the reading 40.280 leaves nothing under the wire at a
 * root of 40.280 − 2 · 3.280 = 33.720.
 */
class OverWiresFindingTest {

    private static final ScrewThread STUB = new ScrewThread(ThreadForm.STUB_ACME, length("38.1"), length("6.35"), 1);
    private static final ScrewThread VEE = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        34.290, -0.285,  true
        33.720,  0.000,  true
        33.719,  0.0005, false
        """)
    void aWireThatTouchesTheRootLeavesThePitchDiameterUnproven(String root, String room, boolean bottoms) {
        OverWiresFinding found = stub(Optional.of(root));
        assertEquals(Optional.of(length(room)), found.rootClearance());
        assertEquals(bottoms, found.bottoms());
        assertEquals(bottoms, found.verdict().standing() == VerdictKind.UNPROVEN);
        assertEquals(
                !bottoms && found.verdict().standing() == VerdictKind.CUT_AGAIN,
                found.proposal().isPresent());
    }

    @Test
    void whatIsAdvisedIsAThickerWireThatClearsTheRootInTheMiddleOfTheLimits() {
        OverWiresFinding found = stub(Optional.of("33.720"));
        Length advised = found.clearingWire().orElseThrow();
        Length over = new MeasurementOverWires(STUB, advised)
                .overWires(found.check().pitchDiameter().middle());
        assertTrue(advised.isAbove(length("3.280")), advised::toString);
        assertTrue(RootClearance.of(over, advised, length("33.720")).signum() > 0, advised::toString);
        assertEquals(Optional.empty(), stub(Optional.of("37.900")).clearingWire());
    }

    /**
     * The root of 33.720 is the same, whichever wires which place was read over; 3.300 lie higher in the groove than
     * 3.280.
     */
    @ParameterizedTest
    @CsvSource({"3.280, 40.280, 3.300, 40.345", "3.300, 40.345, 3.280, 40.280"})
    void theWireAdvisedHangsOnTheRootAndNotOnTheWiresThatWereTakenFirst(
            String first, String over, String then, String overThen) {
        OverWiresFinding found = (OverWiresFinding) new Bench()
                .step(new OverWiresCheck(
                        STUB,
                        Limits.between(mm("36.0"), mm("36.3")),
                        Optional.of(mm("33.720")),
                        Optional.empty(),
                        places(2),
                        1,
                        Combine.EACH,
                        true,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)))
                .did(new StepEvent.GaugeSet(1, Bench.wires(first)))
                .did(new StepEvent.ReadingTaken(1, "1.1", mm(over)))
                .did(new StepEvent.GaugeSet(1, Bench.wires(then)))
                .did(new StepEvent.ReadingTaken(1, "2.1", mm(overThen)))
                .finding(1);
        assertEquals(stub(Optional.of("33.720")).clearingWire(), found.clearingWire());
    }

    /**
     * 20.475 over wires of 1.443 leaves 17.589 under them. Of bronze at 40 °C, read with a gauge at 20 °C, that is
     * 17.589 / (1 + 16.2e-6 · 20) = 17.5833 at 20 °C, where the drawing has its root.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
        17.585, 20, false
        17.585, 40, true
        17.583, 40, false
        """)
    void theRoomAtTheRootIsThatAtTwentyDegrees(String root, String part, boolean bottoms) {
        OverWiresFinding found = (OverWiresFinding) new Bench()
                .in(Bench.BRONZE)
                .step(Bench.wires(VEE, "18.2", "18.3", Optional.of(root), 1), TemperatureAsked.ALWAYS)
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .at(1, part, "20")
                .read(1, "20.475")
                .finding(1);
        assertEquals(bottoms, found.bottoms());
    }

    @Test
    void whereNobodyGivesTheRootAStubThreadOverItsBestWireIsUnproven() {
        OverWiresFinding found = stub(Optional.empty());
        assertTrue(found.mayBottom());
        assertFalse(found.bottoms());
        assertEquals(Optional.empty(), found.rootClearance());
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.empty(), found.proposal());
    }

    /** The basic root is 38.1 − 0.6 · 6.35 = 34.290; a wire of 3.280 that just touches it reads 34.290 + 2 · 3.280. */
    @ParameterizedTest
    @CsvSource({"40.850, true", "40.851, false"})
    void aWireThatJustTouchesTheBasicRootMayRestOnTheOneThatWasCut(String reading, boolean mayBottom) {
        OverWiresFinding found = (OverWiresFinding) new Bench()
                .step(Bench.wires(STUB, "36.0", "36.3", Optional.empty(), 1))
                .did(new StepEvent.GaugeSet(1, Bench.wires("3.280")))
                .read(1, reading)
                .finding(1);
        assertEquals(mayBottom, found.mayBottom());
    }

    @Test
    void noReadingIsJudgedByItselfBeforeTheTemperaturesAreTaken() {
        Bench bench = new Bench()
                .in(Bench.BRONZE)
                .step(Bench.wires(VEE, "18.2", "18.3", Optional.of("17.0"), 1), TemperatureAsked.ALWAYS)
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, "20.400");
        assertEquals(VerdictKind.OPEN, alone(bench));
        assertEquals(VerdictKind.PASS, alone(bench.at(1, "20", "20")));
    }

    private static VerdictKind alone(Bench bench) {
        OverWiresFinding found = (OverWiresFinding) bench.finding(1);
        return found.alone(found.measured().get(0)).orElseThrow().standing();
    }

    @Test
    void aDeepThreadIsJudgedAllTheSameAndItsRootIsSaidToBeUnknown() {
        OverWiresFinding found = (OverWiresFinding) vee(true).read(1, "20.400").finding(1);
        assertTrue(found.basicClearance().orElseThrow().signum() > 0);
        assertFalse(found.mayBottom());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    @ParameterizedTest
    @EnumSource(names = {"EACH", "LARGEST", "SMALLEST", "MEAN"})
    void theLargestRootReadAnywhereRulesHoweverItIsJudgedThere(Combine combine) {
        OverWiresFinding found = (OverWiresFinding) measured(combine, Optional.empty())
                .read(1, "33.000", "33.720")
                .did(new StepEvent.GaugeSet(2, Bench.wires("3.280")))
                .read(2, "40.280")
                .finding(2);
        assertEquals(Optional.of(length("0")), found.rootClearance());
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
    }

    @Test
    void ofARootMeasuredAndOneGivenTheLargerRules() {
        assertEquals(Optional.of(length("-0.285")), root("33.000", "34.290").rootClearance());
        assertEquals(Optional.of(length("-0.285")), root("34.290", "33.000").rootClearance());
    }

    private static OverWiresFinding root(String measured, String planned) {
        return (OverWiresFinding) measured(Combine.EACH, Optional.of(planned))
                .read(1, measured, measured)
                .did(new StepEvent.GaugeSet(2, Bench.wires("3.280")))
                .read(2, "40.280")
                .finding(2);
    }

    @Test
    void aRootThatIsStillToBeMeasuredIsWaitedFor() {
        Bench bench = measured(Combine.EACH, Optional.of("30.000"))
                .read(1, "33.000")
                .did(new StepEvent.GaugeSet(2, Bench.wires("3.280")))
                .read(2, "40.280");
        assertEquals(VerdictKind.OPEN, bench.finding(2).verdict().standing());
        assertEquals(0, bench.finding(2).missing());
    }

    /** 3.300 for 33.000: a root so thin would leave any wire room. */
    @Test
    void aRootThatIsFarOffIsWaitedForToo() {
        assertEquals(VerdictKind.OPEN, root("3.300", "30.000").verdict().standing());
    }

    /** d2 = M + 0.866 · 2.5 − 3 · 1.443 to first order: 18.236 over 20.400, in limits of 18.2 to 18.3. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        20.400, true,  PASS
        20.600, true,  CUT_AGAIN
        20.600, false, FAIL
        20.200, true,  FAIL
        """)
    void aThreadTooBigIsCutAgainWhereThePlanLetsItBeAndOneTooSmallNever(
            String over, boolean cutAgain, VerdictKind standing) {
        OverWiresFinding found = (OverWiresFinding) vee(cutAgain).read(1, over).finding(1);
        assertEquals(standing, found.verdict().standing());
        assertEquals(standing == VerdictKind.CUT_AGAIN, found.proposal().isPresent());
    }

    /**
     * 18.311 over 20.475: past 18.3 by less than the guard band of 0.02. The wire of 1.443 has its bottom at 20.475 − 2
     * · 1.443 = 17.589.
     */
    @ParameterizedTest
    @CsvSource({"17.589, false", "17.588, true"})
    void aLightCutIsOfferedOnlyWhereTheWireIsOffTheRoot(String root, boolean lightCut) {
        OverWiresFinding found = (OverWiresFinding) new Bench()
                .step(new OverWiresCheck(
                        VEE,
                        Limits.between(mm("18.2"), mm("18.3")),
                        Optional.of(mm(root)),
                        Optional.empty(),
                        places(1),
                        1,
                        Combine.EACH,
                        true,
                        mm("0.02"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, "20.475")
                .finding(1);
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(lightCut, found.proposal().isPresent());
    }

    /**
     * The flanks stand 0.184 too far out of the middle, and the root goes down with them: to 16.516 where it was
     * 16.700, with 16.5 the least.
     */
    @Test
    void aCutThatTakesTheRootUnderItsLimitIsNotOffered() {
        OverWiresFinding deepEnough = overRoot("16.700");
        Length change =
                deepEnough.proposal().flatMap(Proposal::change).orElseThrow().abs();
        assertEquals(Optional.empty(), deepEnough.rootUnder());
        OverWiresFinding deep = overRoot("16.600");
        assertEquals(Optional.empty(), deep.proposal());
        assertEquals(Optional.of(length("16.5").minus(length("16.600").minus(change))), deep.rootUnder());
        assertEquals(VerdictKind.CUT_AGAIN, deep.verdict().standing());
    }

    private static OverWiresFinding overRoot(String root) {
        return (OverWiresFinding) new Bench()
                .step(size(Feature.DIAMETER, "16.5", "17.2", Combine.EACH, 2))
                .step(new OverWiresCheck(
                        VEE,
                        Limits.between(mm("18.2"), mm("18.3")),
                        Optional.empty(),
                        Optional.of(1),
                        places(1),
                        1,
                        Combine.EACH,
                        true,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)))
                .read(1, "17.000", root)
                .did(new StepEvent.GaugeSet(2, Bench.wires("1.443")))
                .read(2, "20.600")
                .finding(2);
    }

    private static OverWiresFinding stub(Optional<String> root) {
        return (OverWiresFinding) new Bench()
                .step(Bench.wires(STUB, "36.0", "36.3", root, 1))
                .did(new StepEvent.GaugeSet(1, Bench.wires("3.280")))
                .read(1, "40.280")
                .finding(1);
    }

    private static Bench measured(Combine combine, Optional<String> planned) {
        return new Bench()
                .step(size(Feature.DIAMETER, "20", "40", combine, 2))
                .step(new OverWiresCheck(
                        STUB,
                        Limits.between(mm("36.0"), mm("36.3")),
                        planned.map(Bench::mm),
                        Optional.of(1),
                        places(1),
                        1,
                        Combine.EACH,
                        true,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)));
    }

    private static Bench vee(boolean cutAgain) {
        return new Bench()
                .step(new OverWiresCheck(
                        VEE,
                        Limits.between(mm("18.2"), mm("18.3")),
                        Optional.empty(),
                        Optional.empty(),
                        places(1),
                        1,
                        Combine.EACH,
                        cutAgain,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")));
    }
}
