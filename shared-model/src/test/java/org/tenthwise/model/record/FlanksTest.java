package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Tr 40 × 7, pitch diameter 36.020 to 36.375, depth of its groove 4.000 to 4.060, aimed at 4.030. A groove of 3.975
 * wants 0.055 and needs 0.025; what goes that deep takes 0.110 off the pitch diameter, or 0.050.
 */
class FlanksTest {

    private static final int WIRES = 1;
    private static final int DEPTH = 2;
    private static final String WIRE = "3.620";
    private static final ScrewThread TRAPEZOIDAL =
            new ScrewThread(ThreadForm.TRAPEZOIDAL, length("40"), length("7"), 1);

    private final Bench bench = threadAndGroove("0");

    /**
     * Half-way between the 0.025 that the groove needs and what the flanks let go deep. From a pitch diameter of 36.200
     * they let 0.090: half-way 0.0575, more than the groove wants. From 36.130 they let 0.055, which would leave
     * 36.020, the limit: half-way 0.040, and 36.050. From 36.120 they let 0.050: half-way 0.0375, down to a step of
     * 0.001. From 36.070 just what the groove needs; from 36.068 a step less than that, so none.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # pitch diameter, how, deeper by
        36.200, LEFT_INSIDE, 0.055
        36.130, LEFT_INSIDE, 0.040
        36.120, LEFT_INSIDE, 0.037
        36.070, LEFT_INSIDE, 0.025
        36.068, TAKEN_UNDER,
        36.020, TAKEN_UNDER,
        36.000, TAKEN_UNDER,
        """)
    void noDepthIsOfferedThatTakesThePitchDiameterUnder(String pitchDiameter, Flanks.How how, String deeper) {
        over(pitchDiameter).read(DEPTH, "3.975");
        assertEquals(Optional.of(new Flanks(WIRES, how)), depth().flanks());
        assertEquals(Optional.ofNullable(deeper).map(Bench::length), offered());
        assertEquals(deeper == null, depth().forbidsCutting());
        assertEquals(Optional.empty(), depth().measuredFirst());
    }

    /**
     * Aimed at 4.005 with no cut under 0.010, a groove of 3.998 is left with a spring pass, which takes up to twice
     * 0.010 off the pitch diameter. One of 36.130 has 0.110 for it.
     */
    @Test
    void noSpringPassIsAdvisedBeforeThePitchDiameterIsKnown() {
        Bench little = threadAndGroove(
                "0", new Cutting(Optional.of(new Aim.Size(mm("4.005"))), Optional.of(mm("0.010")), Optional.empty()));
        little.read(DEPTH, "3.998");
        assertEquals(Optional.of(WIRES), little.finding(DEPTH).measuredFirst());
        assertEquals(Optional.empty(), little.finding(DEPTH).proposal());
        over(little, "36.130");
        assertEquals(Optional.empty(), little.finding(DEPTH).measuredFirst());
        assertEquals(
                Proposal.Way.SPRING_PASS,
                little.finding(DEPTH)
                        .proposal()
                        .orElseThrow()
                        .way(little.finding(DEPTH).check().asSize().orElseThrow(), Optional.empty()));
    }

    /**
     * A groove of 3.990 needs 0.010, and flanks of 36.060 let 0.020: half-way is 0.015. A tool that cuts no less than
     * 0.018 is given the 0.020.
     */
    @Test
    void halfWayIsLeftWhereTheToolWouldRub() {
        Bench coarse = threadAndGroove("0", new Cutting(Optional.empty(), Optional.of(mm("0.018")), Optional.empty()));
        over(coarse, "36.060").read(DEPTH, "3.990");
        assertEquals(
                Optional.of(length("0.020")), coarse.finding(DEPTH).proposal().flatMap(Proposal::change));
        over("36.060").read(DEPTH, "3.990");
        assertEquals(Optional.of(length("0.015")), offered());
    }

    /**
     * A pitch diameter of 36.400 wants 0.202 off to the middle, and needs 0.025. From a groove of 4.000 there are 0.060
     * to its limit, so 0.120, half-way 0.072; from 4.047 0.013, half-way 0.025; from 4.048 0.012, so no cut.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # groove, off, whose depth would be over
        ,      0.202,
        3.800, 0.202,
        4.000, 0.072,
        4.047, 0.025,
        4.048, ,      2
        4.070, ,      2
        """)
    void noCutOverWiresIsOfferedThatTakesTheGrooveOver(String groove, String off, Integer over) {
        over("36.400");
        if (groove != null) {
            bench.read(DEPTH, groove);
        }
        OverWiresFinding found = (OverWiresFinding) bench.finding(WIRES);
        assertEquals(
                Optional.ofNullable(off).map(Bench::length).map(Length::negated),
                found.proposal().flatMap(Proposal::change));
        assertEquals(Optional.ofNullable(over), found.grooveOver());
        assertEquals(over != null, found.forbidsCutting());
    }

    /** The guard band belongs to the limit: 36.130 less 36.020 and 0.010 is 0.100: 0.050 deep, half-way 0.0375. */
    @Test
    void theGuardBandOfThePitchDiameterIsKept() {
        Bench guarded = threadAndGroove("0.010");
        over(guarded, "36.130").read(DEPTH, "3.975");
        assertEquals(
                Optional.of(length("0.037")), guarded.finding(DEPTH).proposal().flatMap(Proposal::change));
    }

    @Test
    void withoutAPitchDiameterThatIsMeasuredFirst() {
        bench.read(DEPTH, "3.975");
        assertUnknown();
    }

    /** A wire of 3.620 in a groove so deep that it rests on the root of 32.000: nothing is known by it. */
    @Test
    void aPitchDiameterReadOverWiresThatTouchTheRootIsNotKnown() {
        bench.did(new StepEvent.GaugeSet(WIRES, Bench.wires(WIRE)))
                .read(WIRES, "39.200")
                .read(DEPTH, "3.975");
        assertTrue(((OverWiresFinding) bench.finding(WIRES)).bottoms());
        assertUnknown();
    }

    /** Cut 0.030 deep, so that 36.130 is 36.070 now: the reading of before would still let 0.025 come off. */
    @Test
    void afterACutOfTheGrooveThePitchDiameterIsOfBefore() {
        over("36.130").read(DEPTH, "3.945").did(new StepEvent.PassBegun(DEPTH, Why.CUT));
        assertEquals(VerdictKind.OPEN, bench.finding(WIRES).verdict().standing());
        bench.read(DEPTH, "3.975");
        assertUnknown();
        over("36.070");
        assertEquals(Optional.of(length("0.025")), offered());
    }

    @Test
    void aGrooveThatWasOnlyMeasuredAgainLeavesThePitchDiameterStanding() {
        over("36.130").read(DEPTH, "4.010").did(new StepEvent.PassBegun(DEPTH, Why.MEASURED_AGAIN));
        assertEquals(VerdictKind.PASS, bench.finding(WIRES).verdict().standing());
    }

    /** What was signed for the flanks was signed for them as they were. */
    @Test
    void aConcessionForTheFlanksLapsesWithACutOfTheGroove() {
        over("36.000").did(new StepEvent.DispositionSigned(WIRES, Disposition.USE_AS_IS, "Agreed", "Design office"));
        assertTrue(bench.sheet().line(WIRES).conceded());
        bench.read(DEPTH, "3.975").did(new StepEvent.PassBegun(DEPTH, Why.CUT));
        assertTrue(bench.sheet().line(WIRES).lapsed().isPresent());
    }

    /** A cut over wires makes the groove deeper too. */
    @Test
    void afterACutOverWiresTheGrooveIsMeasuredAgain() {
        over("36.400").read(DEPTH, "4.010").did(new StepEvent.PassBegun(WIRES, Why.CUT));
        assertEquals(VerdictKind.OPEN, bench.finding(DEPTH).verdict().standing());
    }

    @Test
    void whereNothingIsToBeCutNothingIsSaidOfTheFlanks() {
        bench.read(DEPTH, "4.020");
        assertEquals(Optional.empty(), depth().flanks());
        assertEquals(VerdictKind.PASS, depth().verdict().standing());
    }

    /**
     * A root of 16.5 to 17.2 that stands at 17.400 wants 0.550, aimed at the middle. Over wires it is known that 18.700
     * has 0.500 to come off before 18.200.
     */
    @Test
    void aRootIsCutNoFurtherThanThePitchDiameterAllowsOnceThatIsKnown() {
        Bench root = new Bench()
                .step(size(Feature.DIAMETER, "16.5", "17.2", Combine.EACH, 1))
                .step(overWires(new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1), "18.2", "18.3", 1))
                .read(1, "17.400");
        assertEquals(Optional.of(new Flanks(2, Flanks.How.NOT_YET_KNOWN)), ((SizeFinding) root.finding(1)).flanks());
        assertEquals(Optional.of(length("-0.55")), root.finding(1).proposal().flatMap(Proposal::change));
        root.did(new StepEvent.GaugeSet(2, Bench.wires("1.443")))
                .read(
                        2,
                        reading(new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1), "1.443", "18.700"));
        assertEquals(Optional.of(new Flanks(2, Flanks.How.LEFT_INSIDE)), ((SizeFinding) root.finding(1)).flanks());
        assertEquals(Optional.of(length("-0.350")), root.finding(1).proposal().flatMap(Proposal::change));
    }

    private static Bench threadAndGroove(String guardBand) {
        return threadAndGroove(guardBand, Cutting.UNSAID);
    }

    private static Bench threadAndGroove(String guardBand, Cutting groove) {
        OverWiresCheck wires = new OverWiresCheck(
                TRAPEZOIDAL,
                Limits.between(mm("36.020"), mm("36.375")),
                Optional.of(mm("32.000")),
                Optional.empty(),
                places(1),
                1,
                Combine.EACH,
                true,
                mm(guardBand),
                with(GaugeKind.MICROMETER_OVER_WIRES));
        return new Bench()
                .step(wires.cutWith(List.of(DEPTH)))
                .step(new SizeCheck(
                        Feature.DEPTH,
                        Limits.between(mm("4.000"), mm("4.060")),
                        places(1),
                        1,
                        Combine.EACH,
                        true,
                        mm("0"),
                        with(GaugeKind.DEPTH_MICROMETER),
                        groove,
                        Optional.empty(),
                        new Contact.DepthOfThread(WIRES)));
    }

    private static OverWiresCheck overWires(ScrewThread thread, String lower, String upper, int root) {
        return new OverWiresCheck(
                thread,
                Limits.between(mm(lower), mm(upper)),
                Optional.empty(),
                Optional.of(root),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
    }

    private Bench over(String pitchDiameter) {
        return over(bench, pitchDiameter);
    }

    private static Bench over(Bench bench, String pitchDiameter) {
        return bench.did(new StepEvent.GaugeSet(WIRES, Bench.wires(WIRE)))
                .read(WIRES, reading(TRAPEZOIDAL, WIRE, pitchDiameter));
    }

    /** What is read over the wires, up to a millionth of a millimetre so that no limit is missed by the rounding. */
    private static String reading(ScrewThread thread, String wire, String pitchDiameter) {
        return new MeasurementOverWires(thread, length(wire))
                .overWires(length(pitchDiameter))
                .millimetres()
                .setScale(6, RoundingMode.UP)
                .toPlainString();
    }

    private SizeFinding depth() {
        return (SizeFinding) bench.finding(DEPTH);
    }

    private Optional<Length> offered() {
        return depth().proposal().flatMap(Proposal::change);
    }

    private void assertUnknown() {
        assertEquals(Optional.of(new Flanks(WIRES, Flanks.How.UNKNOWN)), depth().flanks());
        assertEquals(Optional.empty(), depth().proposal());
        assertEquals(Optional.of(WIRES), depth().measuredFirst());
        assertEquals(VerdictKind.CUT_AGAIN, depth().verdict().standing());
    }
}
