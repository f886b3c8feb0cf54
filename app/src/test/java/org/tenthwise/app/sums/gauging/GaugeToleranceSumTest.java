package org.tenthwise.app.sums.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

class GaugeToleranceSumTest {

    private final Asking sums = new Asking();

    /** A step reaches over one size up to and including the next; ASME B89.1.5 as TM 9-243, p. 15-2, prints it. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        XX, 0.0101,  0.00002000
        XX, 0.825,   0.00002000
        XX, 0.8251,  0.00003000
        X,  1.51,    0.00006000
        X,  1.5101,  0.00008000
        Y,  2.51,    0.00012000
        Y,  2.5101,  0.00015000
        Z,  4.51,    0.00020000
        Z,  4.5101,  0.00025000
        ZZ, 6.51,    0.00050000
        ZZ, 9.01,    0.00064000
        ZZ, 9.0101,  0.00080000
        X,  12.01,   0.00020000
        """)
    void aSizeOnAnEdgeBelongsToTheStepBelow(String gaugeClass, String size, String tolerance) {
        SumResult answer = sums.answer(Unit.INCH, "gauge-tolerance", "class=%s; size=%s".formatted(gaugeClass, size));
        assertEquals(tolerance, at(answer, "tolerance"));
    }

    @Test
    void inMillimetresTheTableIsTheSame() {
        SumResult answer =
                sums.answer(Unit.MILLIMETRE, "gauge-tolerance", "class=X; size=20.955; part_tolerance=0.021");
        assertEquals("0.001016", at(answer, "tolerance"));
        assertEquals("0.001050", at(answer, "each_member"));
        assertTrue(answer.notes().stream().noneMatch(note -> note.toString().contains("takes more")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        class=Z; size=1; part_tolerance=0.002   | Class Z takes more than 5 % of the tolerance of the part; class Y does not
        class=ZZ; size=1; part_tolerance=0.0024 | class Z does not
        class=X; size=1; part_tolerance=0.0005  | so does every other class
        """)
    void aGaugeThatTakesTooMuchOfTheToleranceIsSaidWithTheClassThatDoesNot(String given, String words) {
        SumResult answer = sums.answer(Unit.INCH, "gauge-tolerance", given);
        assertTrue(answer.notes().toString().contains(words), answer.notes()::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        class=W; size=1                      | class          | class is "W"
        class=x; size=1                      | class          | class is "x"
        class=X; size=0.01                   | size           | over 0.010 in up to 12.010 in
        class=X; size=12.011                 | size           | size is 12.011
        class=X; size=-1                     | size           | more than zero
        class=X; size=1; part_tolerance=0    | part_tolerance | more than zero
        class=X                              | size           | size is missing
        """)
    void whatIsNotInTheTableIsRefusedByItsKey(String given, String key, String words) {
        Problem problem = sums.problem(Unit.INCH, "gauge-tolerance", given);
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }
}
