package org.tenthwise.app.sums.taper;

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
class TaperSumsTest {

    private final Asking asking = new Asking();

    private SumResult mm(String sum, String given) {
        return asking.answer(Unit.MILLIMETRE, sum, given);
    }

    private static boolean notes(SumResult answer, String part) {
        return answer.notes().stream().anyMatch(note -> note.toString().contains(part));
    }

    /** By hand: 7 in 24 is 8.2971° a side, atan(3.5/24), not half of atan(7/24), which is 8.1301°. */
    @ParameterizedTest
    @CsvSource({"ratio=7 24", "per_unit=0.29166666666666666667", "per_foot=3.5", "large=70; small=0; length=240"})
    void theHalfIsTakenBeforeTheArcTangent(String given) {
        SumResult answer = mm("taper", given);
        assertEquals("8.29714", Asking.at(answer, "half").substring(0, 7));
        assertEquals("3.42857142857", Asking.at(answer, "one_in"));
        assertEquals("3.50000000", Asking.at(answer, "per_foot").substring(0, 10));
        assertTrue(Asking.found(answer, "small").isEmpty());
    }

    @Test
    void rollersTellWhichEndIsDown() {
        // by hand: tan h = 3/40 either way; sec h = 1.0028086, so 10 (1 + sec h - tan h) = 19.278086 and + = 20.778086
        SumResult small = mm("taper", "over_low=60; over_high=66; height=40; roller=10");
        assertEquals("39.221914", Asking.at(small, "small"));
        assertTrue(notes(small, "small end is on the plate"));
        SumResult large = mm("taper", "over_low=66; over_high=60; height=40; roller=10; end=large-down");
        assertEquals("46.721914", Asking.at(large, "large"));
        assertTrue(Asking.found(large, "small").isEmpty());
        assertEquals(Asking.at(small, "included"), Asking.at(large, "included"));
        assertTrue(notes(large, "large end is on the plate"));
        assertTrue(notes(large, "0.01 mm on one reading turns the included angle by 0.0142°"));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.000000", "90, 100.000000", "30, 50.000000"})
    void aStackIsTheSineOfItsAngle(String angle, String stack) {
        SumResult answer = mm("sine-bar", "length=100; angle=" + angle);
        assertEquals(stack, Asking.at(answer, "stack"));
        assertEquals(angle.equals("90"), notes(answer, "measure the complement"));
        assertEquals(
                Double.parseDouble(angle),
                Double.parseDouble(Asking.at(mm("sine-bar", "length=100; stack=" + stack), "angle")),
                1e-9);
    }

    @Test
    void aStackTooLowClosesTheAngle() {
        SumResult answer = mm("sine-bar", "length=100; stack=50; stack_error=-0.01");
        assertEquals("-0.0066", Asking.at(answer, "angle_error").substring(0, 7));
        assertFalse(notes(answer, "complement"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        taper       | included=0                                 | included is 0: it must be more than 0 and less than 180 degrees
        taper       | included=180                               | included is 180: it must be more than 0 and less than 180 degrees
        taper       | half=90                                    | half is 90: it must be more than 0 and less than 90 degrees
        taper       | half=-1                                    | half is -1: it must be more than 0 and less than 90 degrees
        taper       | ratio=7 0                                  | ratio: it must be more than zero
        taper       | ratio=7 24 1                               | ratio has 3 figures: it takes two, such as 7 and 24
        taper       | per_foot=0                                 | per_foot is 0: it must be more than zero
        taper       | included=5; half=2.5                       | included is 5 and half is 2.5: give one of them
        taper       | small=5; length=20                         | None of included, half, ratio, per_foot, per_unit, large, over_low is given: give one
        taper       | large=20; small=20; length=50              | large is 20: it must be more than the small diameter
        taper       | large=20; small=18                         | length is missing
        taper       | included=5; roller=10                      | roller is 10: it goes with over_low, which is not given
        taper       | over_low=50; over_high=50; height=40       | over_high is 50: equal readings are no taper
        taper       | over_low=50; over_high=54                  | height is missing
        taper       | over_low=50; over_high=54; height=0        | height is 0: it must be more than zero
        taper       | over_low=50; over_high=54; height=40; end=large-down | end is large-down: the readings, 50 low and 54 high, say the other
        taper       | over_low=20; over_high=24; height=40; roller=10      | roller is 10: over rollers so large nothing is left of the end on the plate
        taper-balls | large_ball=32; small_ball=40; large_depth=0; small_depth=50 | large_ball is 32: it must be larger than small_ball, 40
        taper-balls | large_ball=40; small_ball=32; large_depth=50; small_depth=8 | large_depth is 50: no cone touches both balls so: the large ball must lie clearly higher than the small one
        taper-balls | large_ball=40; small_ball=32; large_depth=-22; small_depth=62 | large_depth is -22: so high it would rest on the edge of the mouth, not on the taper: take a smaller ball
        sine-bar    | length=100                                 | None of angle, stack is given: give one
        sine-bar    | length=100; angle=30; stack=50             | angle is 30 and stack is 50: give one of them
        sine-bar    | length=100; angle=-1                       | angle is -1: it must be from 0 to 90 degrees
        sine-bar    | length=100; angle=90.1                     | angle is 90.1: it must be from 0 to 90 degrees
        sine-bar    | length=100; stack=100.1                    | stack is 100.1: it must not be less than zero, nor more than the length of the sine bar
        sine-bar    | length=100; angle=90; stack_error=0.001    | stack_error is 0.001: at 90° the angle is too sensitive to the stack for any figure
        tailstock   | work_length=200                            | None of per_foot, per_unit is given: give one
        tailstock   | per_foot=1; per_unit=0.1; work_length=200  | per_foot is 1 and per_unit is 0.1: give one of them
        tailstock   | per_foot=-1; work_length=200               | per_foot is -1: it must be more than zero
        """)
    void whatMakesNoSenseIsRefusedWithKeyAndValue(String sum, String given, String words) {
        assertEquals(words, asking.problem(Unit.MILLIMETRE, sum, given).why().toString());
    }

    @Test
    void aBallMayStandProud() {
        SumResult proud = mm("taper-balls", "large_ball=40; small_ball=32; large_depth=-8; small_depth=76");
        assertEquals("5.73196", Asking.at(proud, "included").substring(0, 7));
        assertTrue(notes(proud, "Two balls prove two places"));
    }

    @Test
    void theOffsetIsExact() {
        // by hand: 1 in 16 on 240 is 15 on diameter, 7.5 on radius
        assertEquals("7.500000", Asking.at(mm("tailstock", "per_unit=0.0625; work_length=240"), "offset"));
    }
}
