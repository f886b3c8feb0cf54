package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.CutsMade.AGAIN;
import static org.tenthwise.model.record.CutsMade.CUT;
import static org.tenthwise.model.record.CutsMade.VEE;
import static org.tenthwise.model.record.CutsMade.bore;
import static org.tenthwise.model.record.CutsMade.cuts;
import static org.tenthwise.model.record.CutsMade.over;
import static org.tenthwise.model.record.CutsMade.thread;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/** Cuts of which nobody can tell what came off. Bore of 30.000 to 30.021. */
class CutThatTellsNothingTest {

    @Test
    void nothingIsToldBeforeTheFirstCut() {
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900")));
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900").did(CUT)));
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
}
