package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LobesTest {

    private static Lobes vee(String degrees) {
        return new Lobes(new BigDecimal(degrees));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # ISO 4292:1985, table for a vee of 90 degrees, from memory
        90,  2, 1
        90,  3, 2
        90,  4, 0.41
        # constructed: the formula of J. Japan Soc. Precision Eng. 43 (514), 1977, p. 1167, with cosines of 60 and 120
        # degrees
        60,  3, 3
        60,  5, 0
        120, 3, 1
        """)
    void aVeeShowsMoreOrLessOfTheLobes(String vee, int lobes, double magnification) {
        assertEquals(magnification, vee(vee).magnification(lobes), 0.005);
    }

    /** ISO 4292 and the formula above: what does not show, of two to nine lobes. */
    @ParameterizedTest
    @CsvSource(
            textBlock = """
        180, 3;5;7;9
        90,  7;9
        60,  2;4;5;7;8
        108, 4;6;9
        """)
    void whatAGaugeMissesIsKnown(String vee, String missed) {
        assertEquals(Arrays.stream(missed.split(";")).map(Integer::valueOf).toList(), vee(vee).missed());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-90", "180.1"})
    void whatIsNoVeeIsRefused(String vee) {
        assertThrows(IllegalArgumentException.class, () -> vee(vee));
    }

    @Test
    void oneLobeIsAnEccentricity() {
        assertEquals(
                "lobes is 1: eccentric work has one, out-of-round work has two or more",
                assertThrows(IllegalArgumentException.class, () -> vee("90").magnification(1))
                        .getMessage());
    }
}
