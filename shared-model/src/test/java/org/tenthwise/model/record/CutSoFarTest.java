package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;

/** What was asked for and what came off, cut by cut. Bore of 30.000 to 30.021, outside of 47.980 to 48.000. */
class CutSoFarTest {

    private static final Event CUT = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT);
    private static final Event AGAIN = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN);
    private static final ScrewThread VEE = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);

    @Test
    void nothingIsToldBeforeTheFirstCut() {
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900")));
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900").did(CUT)));
    }

    /**
     * From 29.860 to 30.0105 by whole steps 0.150 is asked, and 29.990 is 0.130 on; from there 0.020 is asked, and
     * 30.009 is 0.019 on.
     */
    @Test
    void everyCutIsToldWithWhatItWasToTakeOff() {
        Bench bench =
                bore(1).read(1, "29.860").did(CUT).read(1, "29.990").did(CUT).read(1, "30.009");
        assertEquals(
                List.of(
                        new CutSoFar(
                                1, Optional.of(length("0.150")), Optional.empty(), length("0.130"), Optional.empty()),
                        new CutSoFar(
                                2, Optional.of(length("0.020")), Optional.empty(), length("0.019"), Optional.empty())),
                cuts(bench));
    }

    /** From 48.190 to 47.990. */
    @Test
    void whatComesOffAnOutsideMakesItSmaller() {
        Bench bench = new Bench()
                .step(Bench.size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1))
                .read(1, "48.190")
                .did(CUT)
                .read(1, "47.995");
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.of(length("0.200")), Optional.empty(), length("0.195"), Optional.empty())),
                cuts(bench));
    }

    /** Nobody offered a cut on one of two places; it is told by the place that was read both times. */
    @Test
    void onlyPlacesThatWereReadBothTimesTell() {
        Bench bench = bore(2).read(1, "29.860").did(CUT).read(1, "29.960", "29.700");
        assertEquals(
                List.of(new CutSoFar(1, Optional.empty(), Optional.empty(), length("0.100"), Optional.empty())),
                cuts(bench));
        bench = bore(2).read(1, "29.860").did(CUT).did(new StepEvent.ReadingTaken(1, "2.1", mm("29.960")));
        assertEquals(List.of(), cuts(bench));
    }

    /** From the middle of 29.860 and 29.864 to 30.0105 it is 0.1485. */
    @Test
    void ofSeveralPlacesTheMeanIsTold() {
        Bench bench = bore(2).read(1, "29.860", "29.864").did(CUT).read(1, "29.960", "29.968");
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.of(length("0.148")), Optional.empty(), length("0.102"), Optional.empty())),
                cuts(bench));
    }

    @Test
    void aSizeThatWentTheOtherWayIsToldByItsSign() {
        Bench bench = bore(1).read(1, "29.860").did(CUT).read(1, "29.858");
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.of(length("0.150")), Optional.empty(), length("-0.002"), Optional.empty())),
                cuts(bench));
    }

    /** Half of 0.021 is 0.0105, half of 0.020 is 0.010: just that much is not over it. */
    @Test
    void aCutThatLeftMoreMetalByMoreThanHalfTheToleranceIsContradicted() {
        assertFalse(CutSoFar.contradicted(
                bore(1).read(1, "29.860").did(CUT).read(1, "29.8495").sheet().line(1)));
        assertTrue(CutSoFar.contradicted(
                bore(1).read(1, "29.860").did(CUT).read(1, "29.8494").sheet().line(1)));
        Bench outside = new Bench()
                .step(Bench.size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1))
                .read(1, "48.100")
                .did(CUT);
        assertFalse(CutSoFar.contradicted(outside.sheet().line(1)), "nothing is read after it");
        assertTrue(CutSoFar.contradicted(outside.read(1, "48.111").sheet().line(1)));
        outside.did(CUT).read(1, "48.051");
        assertFalse(CutSoFar.contradicted(outside.sheet().line(1)), "the cut after it took off as it must");
    }

    /**
     * Rework is no cut of this step: what was read before it says nothing of the last cut any more. So is a cut after
     * which nothing is read.
     */
    @Test
    void onlyTheCutThatTheWorkStandsAfterIsTheLast() {
        Bench bench = bore(1).read(1, "29.860").did(CUT).read(1, "29.800");
        assertEquals(
                Optional.of(length("-0.060")),
                CutSoFar.last(bench.sheet().line(1)).map(CutSoFar::cameOff));
        assertEquals(
                Optional.of(length("-0.060")),
                CutSoFar.last(bench.did(AGAIN).read(1, "29.800").sheet().line(1))
                        .map(CutSoFar::cameOff));
        bench.did(new StepEvent.DispositionSigned(
                        1, Disposition.REWORK, "bored with a new bar", "Foreman 1", Optional.empty()))
                .read(1, "29.990");
        assertEquals(
                List.of(length("-0.060")),
                cuts(bench).stream().map(CutSoFar::cameOff).toList());
        assertEquals(Optional.empty(), CutSoFar.last(bench.sheet().line(1)));
        assertFalse(CutSoFar.contradicted(bench.sheet().line(1)));
        assertEquals(
                Optional.empty(),
                CutSoFar.last(bore(1).read(1, "29.860")
                        .did(CUT)
                        .read(1, "29.800")
                        .did(CUT)
                        .sheet()
                        .line(1)));
    }

    @ParameterizedTest
    @CsvSource({
        "0.050,, 0, true",
        "0.050,, -0.001, true",
        "0.049,, 0, false",
        ", 0.071, 0, true",
        ", 0.049, 0, false",
        "0.050,, 0.001, false",
        ",, 0, false"
    })
    void nothingCameOffWhereSomethingMustHave(String asked, String atMost, String off, boolean nothing) {
        assertEquals(
                nothing,
                new CutSoFar(
                                1,
                                Optional.ofNullable(asked).map(figure -> length(figure)),
                                Optional.ofNullable(atMost).map(figure -> length(figure)),
                                length(off),
                                Optional.of(Register.DIAMETER))
                        .tookNothing());
    }

    /** To go by 29.820 no amount was told; 0.100 came off the next time, by whoever knows what. */
    @Test
    void ofACutAfterOneThatIsContradictedNothingWasAsked() {
        Bench bench =
                bore(1).read(1, "29.860").did(CUT).read(1, "29.820").did(CUT).read(1, "29.920");
        assertEquals(
                List.of(Optional.of(length("0.150")), Optional.empty()),
                cuts(bench).stream().map(CutSoFar::asked).toList());
        Line line = bench.sheet().line(1);
        assertEquals(
                List.of(false, true, false),
                line.passes().stream()
                        .map(pass -> CutSoFar.contradicted(line, pass))
                        .toList());
    }

    @Test
    void aPassInWhichNothingWasReadIsPassedOver() {
        Bench bench = bore(1).read(1, "29.860").did(CUT).did(AGAIN).read(1, "29.990");
        assertEquals(
                List.of(length("0.130")),
                cuts(bench).stream().map(CutSoFar::cameOff).toList());
    }

    @Test
    void measuringAgainIsNoCut() {
        assertEquals(List.of(), cuts(bore(1).read(1, "29.860").did(AGAIN).read(1, "29.862")));
    }

    @Test
    void aCutBesideAFigureFarOffTellsNothing() {
        Bench bench =
                bore(1).read(1, "2986.0").did(CUT).read(1, "29.960").did(CUT).read(1, "30.001");
        assertEquals(
                List.of(new CutSoFar(
                        2, Optional.of(length("0.050")), Optional.empty(), length("0.041"), Optional.empty())),
                cuts(bench));
    }

    /** A range that got less says nothing of what came off. */
    @Test
    void ofARangeNothingIsTold() {
        Bench bench = new Bench()
                .step(Bench.size(Feature.DEPTH, "0.000", "0.020", Combine.RANGE, 2))
                .read(1, "5.000", "5.050")
                .did(CUT)
                .read(1, "5.100", "5.110");
        assertEquals(List.of(), cuts(bench));
    }

    @Test
    void whileATemperatureIsStillToBeTakenNothingIsTold() {
        Bench bench = new Bench()
                .in(Bench.BRONZE)
                .step(Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, 1))
                .at(1, "20", "20")
                .read(1, "29.860")
                .did(CUT)
                .read(1, "29.990");
        assertEquals(List.of(), cuts(bench));
        assertEquals(
                List.of(length("0.130")),
                cuts(bench.at(1, "20", "20")).stream().map(CutSoFar::cameOff).toList());
    }

    /** Pitch diameters 18.634 and 18.334; from the first to the middle of the limits, 18.249, it is 0.385. */
    @Test
    void aThreadIsToldByItsPitchDiameter() {
        Bench bench = thread(Optional.empty()).read(1, over("18.634")).did(CUT).read(1, over("18.334"));
        CutSoFar cut = cuts(bench).get(0);
        assertEquals(Optional.of(length("0.385")), cut.asked());
        assertEquals(length("0.300"), Nanometres.round(cut.cameOff()));
    }

    /**
     * The wire of 1.443 under a reading over 18.334 has its bottom on 17.612. A root that leaves it no room makes the
     * thread read too big.
     */
    @ParameterizedTest
    @CsvSource({"17.600, 1", "17.700, 0"})
    void overWiresThatRestOnTheRootNothingIsTold(String root, int told) {
        assertEquals(
                told,
                cuts(thread(Optional.of(root)).read(1, over("18.634")).did(CUT).read(1, over("18.334")))
                        .size());
    }

    /** The root is measured by step 2: before that nobody knows whether the wires rested on it. */
    @Test
    void whileTheRootIsStillToBeMeasuredNothingIsTold() {
        OverWiresCheck wires = new OverWiresCheck(
                VEE,
                Limits.between(mm("18.164"), mm("18.334")),
                Optional.empty(),
                Optional.of(2),
                Bench.places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                Bench.with(GaugeKind.MICROMETER_OVER_WIRES));
        Bench bench = new Bench()
                .step(wires)
                .step(Bench.size(Feature.DIAMETER, "16.0", "18.0", Combine.EACH, 1))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")))
                .read(1, over("18.634"))
                .did(CUT)
                .read(1, over("18.334"));
        assertEquals(List.of(), cuts(bench));
    }

    /** Half of what may come off at the most says nothing: one may take less. */
    @ParameterizedTest
    @CsvSource({"DIAMETER, 0.142, RADIUS", "DIAMETER, 0.071,", "RADIUS, 0.0355,"})
    void twiceTheMostThatMightComeOffTellsTheRegisterToo(Register said, String off, Register rather) {
        CutSoFar cut = new CutSoFar(1, Optional.empty(), Optional.of(length("0.071")), length(off), Optional.of(said));
        assertEquals(Optional.ofNullable(rather), cut.countsRather());
    }

    /** What is said of the machine after a cut does not change what was asked for before it. */
    @Test
    void whatWasAskedIsToldAsItWasOfferedThen() {
        Bench bench = bore(1).read(1, "29.860")
                .did(CUT)
                .did(new Event.MachineKnown("", Register.RADIUS, Aim.ByLimits.THIRD))
                .read(1, "29.990");
        assertEquals(Optional.of(length("0.150")), cuts(bench).get(0).asked());
    }

    /**
     * Two places apart by 0.090: no even cut. With one of them struck out later, one of 0.150 would do; nobody was
     * offered it.
     */
    @Test
    void aReadingStruckOutLaterDoesNotMakeUpACutThatNobodyWasOffered() {
        Bench bench = bore(3).read(1, "29.860", "29.950")
                .did(new StepEvent.CutOnThese(1, "the back is not bored yet"))
                .did(CUT)
                .read(1, "29.990", "29.992", "29.994");
        assertEquals(Optional.empty(), cuts(bench).get(0).asked());
        bench.did(new Event.StruckOut(3, "slipped"));
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.empty(), Optional.of(length("0.071")), length("0.130"), Optional.empty())),
                cuts(bench));
    }

    /**
     * 30.021 less 29.990 is 0.031, 0.0155 deep. Of a figure that nobody was told, because the tool cannot cut it,
     * nothing is told later.
     */
    @Test
    void whereNoCutWasOfferedTheMostThatMightComeOffIsTold() {
        Bench bench = bore(2).read(1, "29.900", "29.990").did(CUT).read(1, "29.935", "30.025");
        CutSoFar cut =
                new CutSoFar(1, Optional.empty(), Optional.of(length("0.031")), length("0.035"), Optional.empty());
        assertEquals(List.of(cut), cuts(bench));
        SizeCheck check = Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, 2);
        bench = new Bench()
                .step(new SizeCheck(
                        check.feature(),
                        check.limits(),
                        check.places(),
                        1,
                        check.combine(),
                        true,
                        check.guardBand(),
                        check.with(),
                        new Cutting(Optional.empty(), Optional.of(mm("0.016")), Optional.empty()),
                        Optional.empty(),
                        check.contact()))
                .read(1, "29.900", "29.990")
                .did(CUT)
                .read(1, "29.935", "30.025");
        assertEquals(Optional.empty(), cuts(bench).get(0).atMost());
        bench = bore(2).read(1, "29.900", "30.021").did(CUT).read(1, "29.935", "30.056");
        assertEquals(Optional.empty(), cuts(bench).get(0).atMost());
    }

    /** Measured again after the first cut it is 29.991 − 29.860 = 0.131; nothing is read after the second one. */
    @Test
    void aPassKnowsTheCutItWasBegunFor() {
        Bench bench = bore(1).read(1, "29.860")
                .did(CUT)
                .read(1, "29.990")
                .did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN))
                .read(1, "29.991")
                .did(CUT);
        Line line = bench.sheet().line(1);
        assertEquals(
                List.of(Optional.empty(), Optional.of(length("0.131")), Optional.empty(), Optional.empty()),
                line.passes().stream()
                        .map(pass -> CutSoFar.before(pass, line).map(CutSoFar::cameOff))
                        .toList());
    }

    @Test
    void aReadingStruckOutLaterDoesNotTakeAwayTheCutThatWasOffered() {
        Bench bench = bore(2).read(1, "29.860", "29.864").did(CUT).read(1, "29.960", "29.968");
        bench.did(new Event.StruckOut(3, "slipped"));
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.of(length("0.148")), Optional.empty(), length("0.100"), Optional.empty())),
                cuts(bench));
    }

    /**
     * 32.600 across opposite grooves of pitch 7 is √(32.600² − 3.5²) = 32.411572; 32.500 stands for itself or for
     * 32.310989.
     */
    @Test
    void aSizeThatNobodySaidHowItWasTouchedTellsNothing() {
        SizeCheck root = Bench.size(Feature.DIAMETER, "32.000", "32.200", Combine.EACH, 1);
        Bench bench = new Bench()
                .step(new SizeCheck(
                        root.feature(),
                        root.limits(),
                        root.places(),
                        1,
                        root.combine(),
                        true,
                        root.guardBand(),
                        root.with(),
                        Cutting.UNSAID,
                        Optional.empty(),
                        new Contact.InGrooves(length("7"), 1)));
        Event across = new StepEvent.Answered(1, Question.GROOVES_TOUCHED, Answer.OPPOSITE_GROOVES);
        bench.read(1, "32.600").did(across).did(CUT).read(1, "32.500");
        assertEquals(List.of(), cuts(bench));
        bench.did(CUT).read(1, "32.300").did(across);
        assertEquals(List.of(), cuts(bench));
        bench.did(CUT).read(1, "32.250").did(across);
        assertEquals(List.of(3), cuts(bench).stream().map(CutSoFar::number).toList());
    }

    /**
     * 0.150 was asked. A gauge set wrong said that half of it came off; measured again it was 0.139. What is done after
     * that is no part of the cut.
     */
    @Test
    void whatWasMeasuredAgainAfterACutIsWhatItTookOff() {
        Bench bench = bore(2).read(1, "29.860", "29.860")
                .did(CUT)
                .read(1, "29.934", "29.934")
                .did(AGAIN);
        assertEquals(
                List.of(length("0.074")),
                cuts(bench).stream().map(CutSoFar::cameOff).toList());
        bench.read(1, "30.003", "29.995");
        CutSoFar first =
                new CutSoFar(1, Optional.of(length("0.150")), Optional.empty(), length("0.139"), Optional.empty());
        assertEquals(List.of(first), cuts(bench));
        bench.did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MOVED))
                .read(1, "29.990", "29.990")
                .did(AGAIN)
                .read(1, "29.991", "29.991");
        assertEquals(List.of(first), cuts(bench));
        bench.did(CUT).read(1, "30.010", "30.010");
        assertEquals(
                List.of(
                        first,
                        new CutSoFar(
                                2, Optional.of(length("0.019")), Optional.empty(), length("0.019"), Optional.empty())),
                cuts(bench));
    }

    private static Bench bore(int places) {
        return new Bench().step(Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, places));
    }

    private static Bench thread(Optional<String> root) {
        return new Bench()
                .step(Bench.wires(VEE, "18.164", "18.334", root, 1))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")));
    }

    private static String over(String pitchDiameter) {
        return new MeasurementOverWires(VEE, length("1.443"))
                .overWires(length(pitchDiameter))
                .millimetres()
                .toPlainString();
    }

    private static List<CutSoFar> cuts(Bench bench) {
        return CutSoFar.of(bench.sheet().line(1));
    }
}
