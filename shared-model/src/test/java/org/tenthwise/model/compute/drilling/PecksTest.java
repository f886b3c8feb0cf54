package org.tenthwise.model.compute.drilling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class PecksTest {

    private static Pecks pecks(String depth, String first, String step, String shrink, String least) {
        return Pecks.of(mm(depth), mm(first), mm(step), new BigDecimal(shrink), mm(least));
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice: three diameters, then one; three, then two and halved down to half a diameter; by hand
        80, 30, 10, 1,   10,  30 40 50 60 70 80
        60, 15, 10, 0.5, 2.5, 15 25 30 32.5 35 37.5 40 42.5 45 47.5 50 52.5 55 57.5 60
        # a last peck of what is left; a first one as deep as the hole, and deeper
        75, 30, 20, 1,   20,  30 50 70 75
        30, 30, 10, 1,   10,  30
        20, 30, 10, 1,   10,  20
        """)
    void depthsRiseToTheDepth(String depth, String first, String step, String shrink, String least, String depths) {
        assertEquals(
                depths,
                pecks(depth, first, step, shrink, least).depths().stream()
                        .map(length -> length.millimetres().toPlainString())
                        .collect(Collectors.joining(" ")));
    }

    /** By hand: 1000 pecks of 1 are 1000; steps that do not shrink stay as long as the least. */
    @Test
    void aThousandPecksAreTheMost() {
        assertEquals(1000, pecks("1000", "1", "1", "1", "1").depths().size());
        assertThrows(IllegalArgumentException.class, () -> pecks("1000.1", "1", "1", "1", "1"));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        -1,   30, 10,   1,   10
        80,   -1, 10,   1,   10
        80,   30, 10,   -1,  5
        80,   30, 10,   0.5, -1
        0,    30, 10,   1,   10
        80,   0,  10,   1,   10
        80,   30, 10,   0,   5
        80,   30, 10,   1.1, 5
        80,   30, 10,   0.5, 11
        80,   30, 10,   0.5, 0
        1000, 1,  0.5,  1,   0.5
        """)
    void whatMakesNoPecksIsRefused(String depth, String first, String step, String shrink, String least) {
        assertThrows(IllegalArgumentException.class, () -> pecks(depth, first, step, shrink, least));
    }
}
