package org.tenthwise.app.sums.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class PositionSumsTest {

    private static final String HOLE = "zone=0.1; feature=hole; least=10.00; greatest=10.10; ";
    private static final String PIN = "zone=0.1; feature=shaft; least=9.90; greatest=10.00; ";

    private final Asking asking = new Asking();

    private SumResult mm(String sum, String given) {
        return asking.answer(Unit.MILLIMETRE, sum, given);
    }

    private static boolean notes(SumResult answer, String part) {
        return answer.notes().stream().anyMatch(note -> note.toString().contains(part));
    }

    /** By hand: twice the root of 0.06² + 0.08² is 0.2. */
    @ParameterizedTest
    @CsvSource({"0.2, pass", "0.20, pass", "0.199999999999999999, fail", "0.3, pass"})
    void onTheZoneIsAPass(String zone, String state) {
        SumResult answer = mm("position", "dx=0.06; dy=-0.08; zone=" + zone);
        assertEquals("0.200000", Asking.at(answer, "deviation"));
        assertEquals("0.000000", Asking.at(answer, "bonus"));
        assertEquals(state, Asking.at(answer, "state"));
        assertTrue(notes(answer, "Read at one place"));
        assertFalse(notes(answer, "datum features"));
    }

    @Test
    void ofEntryAndExitTheFurtherOffCounts() {
        SumResult answer = mm("position", "dx=0.00 -0.03; dy=0.01 0.04; zone=0.09");
        assertEquals("0.100000", Asking.at(answer, "deviation"));
        assertEquals("fail", Asking.at(answer, "state"));
        assertTrue(notes(answer, "Of 2 places"));
    }

    /** By hand, from the limits in front. */
    @ParameterizedTest
    @CsvSource({
        "hole, mmc, 10.00, 0, 0.000000",
        "hole, mmc, 10.04, 0, 0.040000",
        "hole, mmc, 10.04, 0.03, 0.010000",
        "hole, mmc, 10.04, 0.05, 0.000000",
        "hole, lmc, 10.04, 0, 0.060000",
        "hole, lmc, 10.10, 0, 0.000000",
        "shaft, mmc, 9.97, 0, 0.030000",
        "shaft, lmc, 9.97, 0, 0.070000",
        "shaft, lmc, 9.97, 0.08, 0.000000",
        "hole, none, 10.04, 0, 0.000000"
    })
    void theBonusIsWhatTheSizeLeaves(String feature, String modifier, String size, String loss, String bonus) {
        SumResult answer = mm(
                "position",
                "dx=0; dy=0; " + (feature.equals("hole") ? HOLE : PIN) + "modifier=" + modifier + "; size=" + size
                        + "; orientation_loss=" + loss);
        assertEquals(bonus, Asking.at(answer, "bonus"));
        assertEquals("pass", Asking.at(answer, "state"));
    }

    @ParameterizedTest
    @CsvSource({
        "mmc, 10.11, 0.100000",
        "mmc, 9.99, 0.000000",
        "lmc, 10.11, 0.000000",
        "lmc, 9.99, 0.100000",
        "none, 9.99, 0.000000"
    })
    void aSizeOutsideItsLimitsFailsWhateverItsPlace(String modifier, String size, String bonus) {
        SumResult answer = mm("position", "dx=0; dy=0; " + HOLE + "modifier=" + modifier + "; size=" + size);
        assertEquals("fail", Asking.at(answer, "state"));
        assertEquals(bonus, Asking.at(answer, "bonus"));
        assertTrue(notes(answer, "outside its limits"));
    }

    @Test
    void whatIsNotJudgedIsSaid() {
        SumResult answer = mm("position", "dx=0; dy=0; zone=0; feature=hole; modifier=mmc; size=10.02; least=10.00");
        assertTrue(notes(answer, "greatest is not given"));
        assertTrue(notes(answer, "datum features"));
        assertTrue(notes(answer, "smallest size read anywhere"));
        assertEquals("0.020000", Asking.at(answer, "allowed"));
        assertTrue(notes(mm("position", "dx=0; dy=0; zone=0.1; orientation_loss=0.01"), "changes nothing"));
        assertTrue(notes(
                mm("position", "dx=0; dy=0; zone=0; feature=shaft; modifier=mmc; size=9.9; greatest=10"),
                "largest size read anywhere"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        position        | dx=0.01 0.02; dy=0.01; zone=0.1                       | dx has 2 values and dy has 1: each place needs both
        position        | dx=0.01; zone=0.1                                     | dy is missing
        position        | dx=a; dy=0; zone=0.1                                  | dx is "a": it is not a decimal number
        position        | dx=0 b; dy=0 1; zone=0.1                              | dx, item 2, is "b": it is not a decimal number
        position        | dx=0; dy=0; zone=0                                    | zone is 0: it must be more than zero
        position        | dx=0; dy=0; zone=-0.1                                 | zone is -0.1: it must not be less than zero
        position        | dx=0; dy=0; zone=0.1; modifier=mmc; size=10; least=10 | feature is missing
        position        | dx=0; dy=0; zone=0.1; modifier=mmc; feature=hole; least=10 | size is missing
        position        | dx=0; dy=0; zone=0.1; modifier=mmc; feature=hole; size=10; greatest=10 | least is missing
        position        | dx=0; dy=0; zone=0.1; modifier=mmc; feature=shaft; size=10; least=10 | greatest is missing
        position        | dx=0; dy=0; zone=0.1; modifier=lmc; feature=hole; size=10; least=10 | greatest is missing
        position        | dx=0; dy=0; zone=0.1; size=10; least=10.1; greatest=10 | greatest 10 is below least 10.1: the limits are the wrong way round
        position        | dx=0; dy=0; zone=0.1; orientation_loss=-0.01           | orientation_loss is -0.01: it must not be less than zero
        position        | dx=0; dy=0; zone=0.1; modifier=rfs                     | modifier is "rfs": it is one of lmc, mmc, none
        bolt-circle     | diameter=0; holes=6                                   | diameter is 0: it must be more than zero
        bolt-circle     | diameter=60; holes=1                                  | holes is 1: it must be a whole number from 2 to 1000
        bolt-circle     | diameter=60; holes=2.5                                | holes is 2.5: it must be a whole number from 2 to 1000
        centre-distance | first=20; second=15                                   | None of over, between, web is given: give one
        centre-distance | over=96; between=61; first=20; second=15              | over is 96 and between is 61: give one of them
        centre-distance | over=34.9; first=20; second=15                        | over is 34.9: two of that size would lie in one another
        centre-distance | web=-1; first=20; second=15                           | web is -1: it must not be less than zero
        jaw-packing     | diameter=20; offset=10                                | offset is 10: the middle of the chuck must lie inside the work: it is zero or more, and less than half the diameter
        jaw-packing     | diameter=20; offset=-1                                | offset is -1: it must not be less than zero
        """)
    void whatMakesNoSenseIsRefusedWithKeyAndValue(String sum, String given, String words) {
        assertEquals(words, asking.problem(Unit.MILLIMETRE, sum, given).why().toString());
    }

    @Test
    void aCircleStartsAndTurnsAsItIsTold() {
        // by hand: 4 holes on 20, from 90 degrees on: 0 10, -10 0, 0 -10, 10 0
        SumResult answer = mm("bolt-circle", "diameter=20; holes=4; start=450; centre_x=100");
        assertEquals("100.000000", Asking.at(answer, "x.0"));
        assertEquals("10.000000", Asking.at(answer, "y.0"));
        assertEquals("90.000000", Asking.at(answer, "x.1"));
        assertEquals("0.000000", Asking.at(answer, "y.1"));
        assertEquals("14.142136", Asking.at(answer, "chord"));
        assertTrue(notes(answer, "counter-clockwise"));
    }

    @Test
    void threeWaysOfADistanceComeToOne() {
        assertEquals("78.800000", Asking.at(mm("centre-distance", "over=96.305; first=20.01; second=15"), "distance"));
        assertEquals(
                "78.800000", Asking.at(mm("centre-distance", "between=61.295; first=20.01; second=15"), "distance"));
        SumResult web = mm("centre-distance", "web=61.295; first=20.01; second=15");
        assertEquals("78.800000", Asking.at(web, "distance"));
        assertTrue(notes(web, "those of the bores"));
    }

    @Test
    void noOffsetTakesNoPacking() {
        assertEquals("0.000000", Asking.at(mm("jaw-packing", "diameter=20; offset=0"), "packing"));
    }
}
