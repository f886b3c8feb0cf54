package org.tenthwise.app.sums.profile;

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
class ProfileSumsTest {

    private final Asking sums = new Asking();

    @Test
    void aRadiusOverRollsComesBackWithTheHeightAsGiven() {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "radius", "rolls=10; over=70; height=6");
        assertEquals("83.000000", at(answer, "radius"));
        assertEquals("6.000000", at(answer, "height"));
        assertEquals("-12.0000000", at(answer, "sensitivity").substring(0, 11));
    }

    /** 25.4 times the size in, 25.4 times the size out; what has no unit stays. */
    @Test
    void inchesComeToTheSame() {
        SumResult inches = sums.answer(Unit.INCH, "radius", "chord=1; height=0.125");
        SumResult millimetres = sums.answer(Unit.MILLIMETRE, "radius", "chord=25.4; height=3.175");
        assertEquals("1.06250000", at(inches, "radius"));
        assertEquals("26.987500", at(millimetres, "radius"));
        assertEquals(at(inches, "arc_angle"), at(millimetres, "arc_angle"));
        assertEquals(at(inches, "sensitivity"), at(millimetres, "sensitivity"));
    }

    @Test
    void anArcOfMoreThanHalfATurnIsCalledThat() {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "radius", "chord=6; height=9");
        assertEquals("5.000000", at(answer, "radius"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains("more than half")));
    }

    @Test
    void theOtherWidthOfADovetailNeedsItsHeight() {
        assertEquals(
                Optional.empty(),
                found(
                        sums.answer(Unit.MILLIMETRE, "dovetail", "angle=60; pin=10; side=male; measured=87.32"),
                        "other_width"));
        SumResult answer =
                sums.answer(Unit.MILLIMETRE, "dovetail", "angle=60; pin=10; side=male; measured=87.320508; height=12");
        assertEquals("60.000000", at(answer, "width"));
        assertEquals("73.856406", at(answer, "other_width"));
    }

    /** ASME B17.1 by hand in mm: shaft 10, keyway 6, key 6: Y 1, S 6, T 12.127 and 11.492. */
    @Test
    void aKeyseatInMillimetresHasTheClearancesOfTheInchStandard() {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "keyseat", "diameter=10; width=6; height=6");
        assertEquals("6.000000", at(answer, "s"));
        assertEquals("12.127000", at(answer, "t_parallel"));
        assertEquals("11.492000", at(answer, "t_taper"));
        assertEquals("1.000000", at(answer, "crest"));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            delimiter = '|',
            textBlock =
                    """
        radius         | height=1                                      | chord        | chord is missing
        radius         | chord=20                                      | height       | height is missing
        radius         | chord=20; height=1; radius=50                 | height       | give the one that is known
        radius         | chord=20; rolls=5; height=1                   | chord        | give one of them
        radius         | chord=20; height=1; over=40                   | over         | not with a chord
        radius         | rolls=5; height=1                             | over         | over is missing
        radius         | rolls=5; over=40; radius=20                   | radius       | what comes out
        radius         | chord=20; radius=9.9                          | radius       | does not fit
        radius         | chord=20; height=0                            | height       | more than zero
        radius         | chord=-20; height=1                           | chord        | more than zero
        radius         | rolls=10; over=19.9                           | over         | side by side
        radius         | rolls=10; over=70; height=31                  | height       | at the most
        dovetail       | angle=60; pin=10; side=male                   | width        | width is missing
        dovetail       | angle=60; pin=10; side=male; width=9; measured=8 | width     | give the one that is known
        dovetail       | angle=90; pin=10; side=male; width=60         | angle        | less than 90
        dovetail       | angle=60; pin=10; side=both; width=60         | side         | it is one of female, male
        dovetail       | angle=60; pin=10; side=female; width=20       | width        | no room
        dovetail       | angle=60; pin=10; side=male; measured=27      | measured     | no width
        dovetail       | angle=60; pin=10; side=male; width=60; height=7 | height     | smaller pins
        dovetail       | angle=60; pin=2; side=female; width=20; height=20 | height   | meet
        keyseat        | diameter=10; width=10; height=6               | width        | narrower than the shaft
        keyseat        | diameter=10; width=12; height=6               | width        | narrower than the shaft
        keyseat        | diameter=10; width=6; height=18               | height       | leaves nothing
        keyseat        | diameter=10; width=6                          | height       | height is missing
        keyseat        | diameter=10; width=6; height=6; depth=3       | depth        | takes no
        across-corners | sides=5; across_flats=10                      | sides        | face each other
        across-corners | sides=3; across_flats=10                      | sides        | whole number
        across-corners | sides=6.5; across_flats=10                    | sides        | whole number
        across-corners | sides=6; across_flats=0                       | across_flats | more than zero
        """)
    void whatCannotBeIsRefusedWithItsKey(String sum, String given, String key, String why) {
        Problem problem = sums.problem(Unit.MILLIMETRE, sum, given);
        assertEquals(Optional.of(key), problem.key());
        assertTrue(problem.why().toString().contains(why), () -> problem.why().toString());
    }
}
