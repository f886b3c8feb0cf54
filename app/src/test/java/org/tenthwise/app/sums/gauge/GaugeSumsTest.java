package org.tenthwise.app.sums.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class GaugeSumsTest {

    private final Asking asking = new Asking();

    private SumResult mm(String sum, String given) {
        return asking.answer(Unit.MILLIMETRE, sum, given);
    }

    private static boolean notes(SumResult answer, String part) {
        return answer.notes().stream().anyMatch(note -> note.toString().contains(part));
    }

    @Test
    void aMasterWithoutAZeroReadZero() {
        SumResult answer = asking.answer(Unit.INCH, "from-master", "master=2.000; reading=0.007; sense=-1");
        assertEquals("1.99300000", Asking.at(answer, "size"));
        assertTrue(notes(answer, "No zero was given"));
    }

    @Test
    void fourReadingsAtRightAnglesAlsoTellOvality() {
        // by hand: opposites differ by 0.16, half of it is 0.08, and the movement of 0.1 is mostly that
        SumResult answer = mm("run-out", "angles=0 90 180 270; readings=0.05 -0.03 0.03 -0.05; jaws=180 270 0 90");
        assertEquals("0.080000", Asking.at(answer, "ovality"));
        assertEquals("0.160000", Asking.at(answer, "opposites_differ"));
        assertEquals("-0.010000", Asking.at(answer, "jaw_moves.0"));
        assertTrue(notes(answer, "re-chucking will not fix that"));
        assertTrue(notes(answer, "the work is oval"));
    }

    @Test
    void threeJawsGetShimsAndThreeReadingsHideTheForm() {
        SumResult answer = mm("run-out", "angles=0 120 240; readings=0.1 -0.05 -0.05; jaws=0 120 240");
        // by hand: off by 0.1 towards jaw 1, so 0.15 under jaw 1
        assertEquals("0.150000", Asking.at(answer, "jaw_moves.0"));
        assertEquals("0.000000", Asking.at(answer, "jaw_moves.1"));
        assertTrue(notes(answer, "whether the work is round is not known"));
        assertTrue(Asking.found(answer, "ovality").isEmpty());
    }

    @Test
    void workThatRunsTrueSaysSo() {
        SumResult answer = mm("run-out", "angles=0 90 180 270; readings=0.1 0.1 0.1 0.1");
        assertEquals("0", Asking.at(answer, "high_at"));
        assertTrue(notes(answer, "runs true"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        run-out     | angles=0 180; readings=1 2                       | angles has fewer than three different directions: many circles would fit the readings
        run-out     | angles=0 90 180; readings=1 2 3                  | angles leaves 180° or more of the turn without a reading: the centre would be a guess
        run-out     | angles=0 120 240; readings=1 2                   | angles has 3 values and readings has 2: each reading needs one angle
        run-out     | angles=0 120 240; readings=1 2 3; jaws=0 90      | Jaw moves are worked out for three or four jaws, not for 2
        lever       | reading=0.2; angle=90                            | angle is 90: the stylus of a lever indicator lies at 0° or more to the surface, and at less than 90°
        lobes       | lobes=1; v_angle=90                              | lobes is 1: it must be a whole number from 2 to 1000
        lobes       | lobes=3; v_angle=0                               | v_angle is 0: the angle of a vee is more than 0°; 180° stands for two points
        rocking     | diameter=-3; tilt=5                              | diameter is -3: it must be more than zero
        off-centre  | diameter=25; off_centre=12.5                     | off_centre is 12.5: that far off centre the points do not touch a bore of 25
        from-master | master=12; reading=0.1; sense=2                  | sense is "2": it is one of +1, -1, 1
        from-master | master=12; sense=1                               | reading is missing
        """)
    void whatMakesNoSenseIsRefusedWithKeyAndValue(String sum, String given, String words) {
        assertEquals(words, asking.problem(Unit.MILLIMETRE, sum, given).why().toString());
    }

    @Test
    void aSteepLeverIsWarnedOfAndAFlatOneLetBe() {
        assertTrue(notes(mm("lever", "reading=0.2; angle=31"), "set the stylus flatter"));
        assertTrue(notes(mm("lever", "reading=0.2; angle=9"), "hardly matters"));
        assertEquals(1, mm("lever", "reading=0.2; angle=20").notes().size());
    }

    @Test
    void whatAGaugeDoesNotShowIsSaid() {
        SumResult answer = mm("lobes", "lobes=3; v_angle=180");
        assertTrue(notes(answer, "A two-point gauge does not show 3 lobes"));
        assertTrue(notes(answer, "3, 5, 7, 9 do not show"));
    }

    @Test
    void aZeroThatHasGoneAsksForTheReadingsAgain() {
        assertEquals("read-again", Asking.at(mm("zero-drift", "zero=0; zero_again=0.0011; division=0.001"), "verdict"));
        assertEquals("stands", Asking.at(mm("zero-drift", "zero=0; zero_again=-0.001; division=0.001"), "verdict"));
    }

    @Test
    void aBoreGaugeHeldWrongReadsOff() {
        // by hand: 1/cos 60 degrees is 2; a chord of 24 stands 5 beside the middle of 26
        assertEquals("30.000000", Asking.at(mm("rocking", "diameter=30; tilt=60"), "reads_more"));
        assertEquals("2.000000", Asking.at(mm("off-centre", "diameter=26; off_centre=5"), "reads_less"));
    }
}
