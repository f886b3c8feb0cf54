package org.tenthwise.app.sums.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;
import static org.tenthwise.app.sums.Asking.found;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class ToothSumsTest {

    private static final String SPLINE = "teeth=24; module=2; pressure_angle=30; pin=4; side=external";

    private final Asking sums = new Asking();

    /** 45 teeth of diametral pitch 8, thickness 0.2124, pin 0.216: 5.9637, by hand with a table of involutes. */
    @Test
    void diametralPitchCountsToTheInchWhateverTheUnit() {
        assertEquals(
                "5.9637",
                at(
                                sums.answer(
                                        Unit.INCH,
                                        "over-pins",
                                        "teeth=45; diametral_pitch=8; pressure_angle=20; thickness=0.2124; pin=0.216;"
                                                + " side=external"),
                                "over_pins")
                        .substring(0, 6));
        assertEquals(
                "151.478",
                at(
                                sums.answer(
                                        Unit.MILLIMETRE,
                                        "over-pins",
                                        "teeth=45; diametral_pitch=8; pressure_angle=20; thickness=5.39496; pin=5.4864;"
                                                + " side=external"),
                                "over_pins")
                        .substring(0, 7));
    }

    /** What is read over pins gives the thickness they were worked out from: no shift, half the pitch. */
    @ParameterizedTest
    @CsvSource({"24, external, 4", "25, external, 4", "24, internal, 3.5", "25, internal, 3.5"})
    void theReadingGivesTheThicknessBack(int teeth, String side, String pin) {
        String given = "teeth=%d; module=2; pressure_angle=30; pin=%s; side=%s".formatted(teeth, pin, side);
        String over = at(sums.answer(Unit.MILLIMETRE, "over-pins", given), "over_pins");
        SumResult answer = sums.answer(Unit.MILLIMETRE, "over-pins", given + "; measured=" + over);
        assertEquals(3.141593, Double.parseDouble(at(answer, "thickness")), 2e-6);
        assertEquals(over, at(answer, "over_pins"));
    }

    @Test
    void noThicknessWithoutAReading() {
        assertEquals(Optional.empty(), found(sums.answer(Unit.MILLIMETRE, "over-pins", SPLINE), "thickness"));
    }

    @Test
    void helicalTeethOfAnOddNumberAreNotForTwoPins() {
        SumResult answer = sums.answer(
                Unit.MILLIMETRE,
                "over-pins",
                "teeth=25; module=2; pressure_angle=20; helix=15; pin=3.5; side=external");
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains("two balls in one plane")));
    }

    @Test
    void aShiftOfInsideTeethSaysWhichWayItCounts() {
        SumResult answer = sums.answer(
                Unit.MILLIMETRE,
                "over-pins",
                "teeth=24; module=2; pressure_angle=30; shift=0.05; pin=3.5; side=internal");
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains("turn its sign")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        over-pins | module=2; pressure_angle=30; pin=4; side=external               | teeth          | teeth is missing
        over-pins | teeth=24; pressure_angle=30; pin=4; side=external               | module         | module is missing
        over-pins | teeth=24; module=2; diametral_pitch=12; pressure_angle=30; pin=4; side=external | module | give one of them
        over-pins | teeth=24.5; module=2; pressure_angle=30; pin=4; side=external   | teeth          | whole number
        over-pins | teeth=24; module=2; pressure_angle=90; pin=4; side=external     | pressure_angle | less than 90
        over-pins | teeth=24; module=2; pressure_angle=30; pin=4                    | side           | side is missing
        over-pins | teeth=24; module=2; pressure_angle=30; helix=90; pin=4; side=external  | helix   | less than 90
        over-pins | teeth=24; module=2; pressure_angle=30; helix=-5; pin=4; side=external  | helix   | less than zero
        over-pins | teeth=24; module=2; pressure_angle=30; shift=0.1; thickness=3; pin=4; side=external | thickness | give one of them
        over-pins | teeth=24; module=2; pressure_angle=30; shift=3; pin=4; side=external   | shift   | no tooth
        over-pins | teeth=24; module=2; pressure_angle=30; thickness=6.3; pin=4; side=external | thickness | less than the pitch
        over-pins | teeth=24; module=2; pressure_angle=30; pin=0.4; side=external   | pin            | too deep
        over-pins | teeth=24; module=2; pressure_angle=30; pin=60; side=external    | pin            | both flanks
        over-pins | teeth=24; module=2; pressure_angle=30; pin=9; side=internal     | pin            | too deep
        over-pins | teeth=24; module=2; pressure_angle=30; pin=4; side=external; measured=45 | measured | already
        over-pins | teeth=24; module=2; pressure_angle=30; pin=4; side=external; measured=70 | measured | 70
        span      | teeth=24; module=2; pressure_angle=30                           | over           | over is missing
        span      | teeth=24; module=2; pressure_angle=30; over=24                  | over           | not all
        span      | teeth=24; module=2; pressure_angle=30; over=11                  | over           | above the teeth
        chordal   | teeth=24; module=2                                              | pressure_angle | pressure_angle is missing
        chordal   | teeth=24; module=2; pressure_angle=20; addendum=0               | addendum       | more than zero
        """)
    void whatCannotBeIsRefusedWithItsKey(String sum, String given, String key, String why) {
        Problem problem = sums.problem(Unit.MILLIMETRE, sum, given);
        assertEquals(Optional.of(key), problem.key());
        assertTrue(problem.why().toString().contains(why), () -> problem.why().toString());
    }

    /** 90 degrees over the teeth, exactly: what is rounded for the caliper is not used for the angle. */
    @Test
    void theHalfAngleOfAPlainToothIsNinetyDegreesOverTheTeeth() {
        assertEquals(
                "4.50000000",
                at(
                        sums.answer(Unit.MILLIMETRE, "chordal", "teeth=20; module=5; pressure_angle=20; addendum=5"),
                        "half_angle"));
    }
}
