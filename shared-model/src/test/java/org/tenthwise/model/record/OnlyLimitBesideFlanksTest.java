package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.cutting.EvenCut;
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
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;

/**
 * Tr 40 × 7, pitch diameter 36.020 to 36.375, and the depth of its groove 4.000 at the least: what goes c deeper takes
 * 2 c off the pitch diameter. A groove of 3.975 needs 0.025. By hand from the figures beside it.
 */
class OnlyLimitBesideFlanksTest {

    private static final int WIRES = 1;
    private static final int DEPTH = 2;
    private static final String WIRE = "3.620";
    private static final ScrewThread THREAD = new ScrewThread(ThreadForm.TRAPEZOIDAL, length("40"), length("7"), 1);

    private final Bench bench = bench(Cutting.UNSAID, Limits.between(mm("36.020"), mm("36.375")));

    /**
     * Flanks of 36.130 let 0.055: half-way from 0.025 is 0.040, so that 4.015 and 36.050 are both inside by something.
     * From 36.075 they let 0.0275: half-way 0.02625, down to a step of 0.001 0.026. From 36.068 they let 0.024, which
     * is not enough, so none.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # pitch diameter, how, deeper by
        36.130, LEFT_INSIDE, 0.040
        36.075, LEFT_INSIDE, 0.026
        36.068, TAKEN_UNDER,
        36.000, TAKEN_UNDER,
        """)
    void withoutAnAimTheCutGoesHalfWayToWhereTheFlanksStop(String pitchDiameter, Flanks.How how, String deeper) {
        over(bench, pitchDiameter).read(DEPTH, "3.975");
        assertEquals(Optional.of(how), how(bench));
        assertEquals(Optional.ofNullable(deeper).map(Bench::length), offered(bench));
        assertEquals(deeper == null, depth(bench).forbidsCutting());
    }

    /** From 36.200 they let 0.090: half-way 0.0575, and 0.030 is asked. From 36.070 there is 0.025 and no more. */
    @ParameterizedTest
    @CsvSource(textBlock = """
        36.200, 0.030
        36.075, 0.026
        """)
    void withAnAimTheCutGoesNoFurtherThanHalfWay(String pitchDiameter, String deeper) {
        Bench aimed = bench(
                new Cutting(Optional.of(new Aim.Size(mm("4.005"))), Optional.empty(), Optional.empty()),
                Limits.between(mm("36.020"), mm("36.375")));
        over(aimed, pitchDiameter).read(DEPTH, "3.975");
        assertEquals(Optional.of(length(deeper)), offered(aimed));
    }

    /** Half-way is 0.040; a tool that cuts no less than 0.050 is given the 0.055 that the flanks let. */
    @Test
    void halfWayIsLeftWhereTheToolWouldRub() {
        Bench coarse = bench(
                new Cutting(Optional.empty(), Optional.of(mm("0.050")), Optional.empty()),
                Limits.between(mm("36.020"), mm("36.375")));
        over(coarse, "36.130").read(DEPTH, "3.975");
        assertEquals(Optional.of(Flanks.How.LEFT_INSIDE), how(coarse));
        assertEquals(Optional.of(length("0.055")), offered(coarse));
    }

    @Test
    void withoutAPitchDiameterThatIsMeasuredThatComesFirst() {
        bench.read(DEPTH, "3.975");
        assertPitchDiameterFirst();
    }

    @Test
    void afterACutOfTheGrooveThePitchDiameterIsOfBefore() {
        over(bench, "36.130").read(DEPTH, "3.945").did(new StepEvent.PassBegun(DEPTH, Why.CUT));
        bench.read(DEPTH, "3.975");
        assertPitchDiameterFirst();
    }

    /** Without a lower limit of the flanks nothing binds the groove, and nothing says how far past 4.000. */
    @Test
    void flanksWithoutALowerLimitBindNothing() {
        Bench free = bench(Cutting.UNSAID, Limits.atMost(mm("36.375")));
        over(free, "36.130").read(DEPTH, "3.975");
        assertEquals(Optional.of(Flanks.How.LEFT_INSIDE), how(free));
        assertEquals(
                Optional.of(new EvenCut.NoCut(EvenCut.Reason.NO_AIM, Optional.empty())),
                depth(free).proposal().map(Proposal::cut));
    }

    private void assertPitchDiameterFirst() {
        assertEquals(Optional.of(Flanks.How.UNKNOWN), how(bench));
        assertEquals(Optional.of(WIRES), depth(bench).measuredFirst());
        assertEquals(Optional.empty(), depth(bench).proposal());
    }

    private static Bench bench(Cutting groove, Limits pitchDiameter) {
        OverWiresCheck wires = new OverWiresCheck(
                THREAD,
                pitchDiameter,
                Optional.of(mm("32.000")),
                Optional.empty(),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
        return new Bench()
                .step(wires.cutWith(List.of(DEPTH)))
                .step(new SizeCheck(
                        Feature.DEPTH,
                        new Limits(Optional.of(mm("4.000")), Optional.empty()),
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

    /** Up to a millionth of a millimetre, so that no limit is missed by the rounding. */
    private static Bench over(Bench bench, String pitchDiameter) {
        String reading = new MeasurementOverWires(THREAD, length(WIRE))
                .overWires(length(pitchDiameter))
                .millimetres()
                .setScale(6, RoundingMode.UP)
                .toPlainString();
        return bench.did(new StepEvent.GaugeSet(WIRES, Bench.wires(WIRE))).read(WIRES, reading);
    }

    private static SizeFinding depth(Bench bench) {
        return (SizeFinding) bench.finding(DEPTH);
    }

    private static Optional<Flanks.How> how(Bench bench) {
        return depth(bench).flanks().map(Flanks::how);
    }

    private static Optional<Length> offered(Bench bench) {
        return depth(bench).proposal().flatMap(Proposal::change);
    }
}
