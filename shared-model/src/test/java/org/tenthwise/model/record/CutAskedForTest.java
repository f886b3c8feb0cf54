package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.CutsMade.CUT;
import static org.tenthwise.model.record.CutsMade.bore;
import static org.tenthwise.model.record.CutsMade.cuts;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/** What a cut was to take off, or the most it might. Bore of 30.000 to 30.021. */
class CutAskedForTest {

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
                .did(new ShopEvent.MachineKnown("", Register.RADIUS, Aim.ByLimits.THIRD))
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

    @Test
    void aReadingStruckOutLaterDoesNotTakeAwayTheCutThatWasOffered() {
        Bench bench = bore(2).read(1, "29.860", "29.864").did(CUT).read(1, "29.960", "29.968");
        bench.did(new Event.StruckOut(3, "slipped"));
        assertEquals(
                List.of(new CutSoFar(
                        1, Optional.of(length("0.148")), Optional.empty(), length("0.100"), Optional.empty())),
                cuts(bench));
    }
}
