package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Event;

/** What was asked for and what came off, cut by cut. Bore of 30.000 to 30.021, outside of 47.980 to 48.000. */
class CutSoFarTest {

    private static final Event CUT = new Event.PassBegun(1, Event.PassBegun.Why.CUT);

    @Test
    void nothingIsToldBeforeTheFirstCut() {
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900")));
        assertEquals(List.of(), cuts(bore(1).read(1, "29.900").did(CUT)));
    }

    /** 29.860 asks for 0.150 to 30.0105 by whole steps; 30.003 − 29.860 = 0.143, then 0.007 is asked and 0.006 comes off. */
    @Test
    void everyCutIsToldWithWhatItWasToTakeOff() {
        Bench bench = bore(1).read(1, "29.860").did(CUT).read(1, "29.990").did(CUT).read(1, "30.009");
        assertEquals(List.of(new CutSoFar(1, Optional.of(length("0.150")), length("0.130")),
                new CutSoFar(2, Optional.of(length("0.020")), length("0.019"))), cuts(bench));
    }

    @Test
    void whatComesOffAnOutsideMakesItSmaller() {
        Bench bench = new Bench().step(Bench.size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1)).read(1, "48.190").did(CUT).read(1, "47.995");
        assertEquals(List.of(new CutSoFar(1, Optional.of(length("0.200")), length("0.195"))), cuts(bench));
    }

    /** Nobody offered a cut on one of two places; it is told by the place that was read both times. */
    @Test
    void onlyPlacesThatWereReadBothTimesTell() {
        Bench bench = bore(2).read(1, "29.860").did(CUT).read(1, "29.960", "29.700");
        assertEquals(List.of(new CutSoFar(1, Optional.empty(), length("0.100"))), cuts(bench));
        bench = bore(2).read(1, "29.860").did(CUT).did(new Event.ReadingTaken(1, "2.1", mm("29.960")));
        assertEquals(List.of(), cuts(bench));
    }

    @Test
    void ofSeveralPlacesTheMeanIsTold() {
        Bench bench = bore(2).read(1, "29.860", "29.864").did(CUT).read(1, "29.960", "29.968");
        assertEquals(List.of(new CutSoFar(1, Optional.of(length("0.148")), length("0.102"))), cuts(bench));
    }

    @Test
    void aSizeThatWentTheOtherWayHadNothingComeOff() {
        Bench bench = bore(1).read(1, "29.860").did(CUT).read(1, "29.858");
        assertEquals(List.of(new CutSoFar(1, Optional.of(length("0.150")), length("0"))), cuts(bench));
    }

    @Test
    void measuringAgainIsNoCutAndACutBesideAFigureFarOffTellsNothing() {
        Event again = new Event.PassBegun(1, Event.PassBegun.Why.MEASURED_AGAIN);
        assertEquals(List.of(), cuts(bore(1).read(1, "29.860").did(again).read(1, "29.862")));
        Bench bench = bore(1).read(1, "2986.0").did(CUT).read(1, "29.960").did(CUT).read(1, "30.001");
        assertEquals(List.of(new CutSoFar(2, Optional.of(length("0.050")), length("0.041"))), cuts(bench));
    }

    /** What is said of the machine after a cut does not change what was asked for before it. */
    @Test
    void whatWasAskedIsToldAsItWasOfferedThen() {
        Bench bench = bore(1).read(1, "29.860").did(CUT)
                .did(new Event.MachineKnown("", org.tenthwise.model.plan.Register.RADIUS, org.tenthwise.model.plan.Aim.ByLimits.THIRD)).read(1, "29.990");
        assertEquals(Optional.of(length("0.150")), cuts(bench).get(0).asked());
    }

    /** Two places apart by 0.090: no even cut. With one of them struck out later, one of 0.150 would do; nobody was offered it. */
    @Test
    void aReadingStruckOutLaterDoesNotMakeUpACutThatNobodyWasOffered() {
        Bench bench = bore(3).read(1, "29.860", "29.950").did(new Event.CutOnThese(1, "the back is not bored yet")).did(CUT).read(1, "29.990", "29.992", "29.994");
        assertEquals(Optional.empty(), cuts(bench).get(0).asked());
        bench.did(new Event.StruckOut(3, "slipped"));
        assertEquals(List.of(new CutSoFar(1, Optional.empty(), length("0.130"))), cuts(bench));
    }

    @Test
    void aReadingStruckOutLaterDoesNotTakeAwayTheCutThatWasOffered() {
        Bench bench = bore(2).read(1, "29.860", "29.864").did(CUT).read(1, "29.960", "29.968");
        bench.did(new Event.StruckOut(3, "slipped"));
        assertEquals(List.of(new CutSoFar(1, Optional.of(length("0.148")), length("0.100"))), cuts(bench));
    }

    /** 32.600 across opposite grooves of pitch 7 is √(32.600² − 3.5²) = 32.411572; 32.500 stands for itself or for 32.310989. */
    @Test
    void aSizeThatNobodySaidHowItWasTouchedTellsNothing() {
        Check.Size root = Bench.size(Feature.DIAMETER, "32.000", "32.200", Combine.EACH, 1);
        Bench bench = new Bench().step(new Check.Size(root.feature(), root.limits(), root.places(), 1, root.combine(), true, root.guardBand(), root.with(),
                Cutting.UNSAID, Optional.empty(), new Contact.AcrossGrooves(length("7"), 1)));
        Event across = new Event.Answered(1, Question.GROOVES_TOUCHED, Answer.OPPOSITE_GROOVES);
        bench.read(1, "32.600").did(across).did(CUT).read(1, "32.500");
        assertEquals(List.of(), cuts(bench));
        bench.did(CUT).read(1, "32.300").did(across);
        assertEquals(List.of(), cuts(bench));
        bench.did(CUT).read(1, "32.250").did(across);
        assertEquals(List.of(3), cuts(bench).stream().map(CutSoFar::number).toList());
    }

    /** 0.150 was asked. A gauge set wrong said that half of it came off; measured again it was 0.139. What is done after that is no part of the cut. */
    @Test
    void whatWasMeasuredAgainAfterACutIsWhatItTookOff() {
        Event again = new Event.PassBegun(1, Event.PassBegun.Why.MEASURED_AGAIN);
        Bench bench = bore(2).read(1, "29.860", "29.860").did(CUT).read(1, "29.934", "29.934").did(again);
        assertEquals(List.of(length("0.074")), cuts(bench).stream().map(CutSoFar::cameOff).toList());
        bench.read(1, "30.003", "29.995");
        CutSoFar first = new CutSoFar(1, Optional.of(length("0.150")), length("0.139"));
        assertEquals(List.of(first), cuts(bench));
        bench.did(new Event.PassBegun(1, Event.PassBegun.Why.MOVED)).read(1, "29.990", "29.990").did(again).read(1, "29.991", "29.991");
        assertEquals(List.of(first), cuts(bench));
        bench.did(CUT).read(1, "30.010", "30.010");
        assertEquals(List.of(first, new CutSoFar(2, Optional.of(length("0.019")), length("0.019"))), cuts(bench));
    }

    private static Bench bore(int places) {
        return new Bench().step(Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, places));
    }

    private static List<CutSoFar> cuts(Bench bench) {
        return CutSoFar.of(bench.sheet().line(1));
    }
}
