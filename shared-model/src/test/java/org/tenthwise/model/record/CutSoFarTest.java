package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.CutsMade.AGAIN;
import static org.tenthwise.model.record.CutsMade.CUT;
import static org.tenthwise.model.record.CutsMade.bore;
import static org.tenthwise.model.record.CutsMade.cuts;
import static org.tenthwise.model.record.CutsMade.over;
import static org.tenthwise.model.record.CutsMade.thread;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;

/** What came off, cut by cut. Bore of 30.000 to 30.021, outside of 47.980 to 48.000. */
class CutSoFarTest {

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
        "0.468,, 0.003, true",
        "0.050,, 0.005, true",
        "0.050,, 0.006, false",
        "0.020,, 0.002, true",
        ", 0.071, 0, true",
        ", 0.071, 0.007, true",
        ", 0.071, 0.008, false",
        ",, 0, false"
    })
    void hardlyAnythingCameOffUpToATenth(String asked, String atMost, String off, boolean nothing) {
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

    /** Pitch diameters 18.634 and 18.334; from the first to the middle of the limits, 18.249, it is 0.385. */
    @Test
    void aThreadIsToldByItsPitchDiameter() {
        Bench bench = thread(Optional.empty()).read(1, over("18.634")).did(CUT).read(1, over("18.334"));
        CutSoFar cut = cuts(bench).get(0);
        assertEquals(Optional.of(length("0.385")), cut.asked());
        assertEquals(length("0.300"), Nanometres.round(cut.cameOff()));
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
}
