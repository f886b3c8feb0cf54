package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeOfNormalTest {

    /** Closed forms: two and three readings are a fold and a triangle of the normal distribution. */
    @Test
    void twoAndThreeReadingsComeOutInClosedForm() {
        assertEquals(2 / Math.sqrt(Math.PI), RangeOfNormal.d2(2), 1e-13);
        assertEquals(3 / Math.sqrt(Math.PI), RangeOfNormal.d2(3), 1e-13);
        assertEquals(Math.sqrt(2 - 4 / Math.PI), RangeOfNormal.d3(2), 1e-12);
    }

    /** d2 and d3 to three places, ASTM MNL 7, factors for control charts; 15 to 25 and 100 from memory. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            4,   2.059, 0.880
            5,   2.326, 0.864
            6,   2.534, 0.848
            7,   2.704, 0.833
            8,   2.847, 0.820
            9,   2.970, 0.808
            10,  3.078, 0.797
            15,  3.472, 0.756
            20,  3.735, 0.729
            25,  3.931, 0.708
            100, 5.015, 0.605
            """)
    void theFactorsAreThoseOfTheTables(int n, double d2, double d3) {
        assertEquals(d2, RangeOfNormal.d2(n), 0.0005);
        assertEquals(d3, RangeOfNormal.d3(n), 0.0005);
    }

    /** The integral of d2 by itself, with mpmath 1.3.0, and d3 from the double one. */
    @ParameterizedTest
    @CsvSource({"5, 2.3259289473, 0.8640819411", "10, 3.0775054617, 0.7970506735"})
    void theFactorsAreRightToTenPlaces(int n, double d2, double d3) {
        assertEquals(d2, RangeOfNormal.d2(n), 6e-11);
        assertEquals(d3, RangeOfNormal.d3(n), 6e-11);
    }

    /** Measurement Systems Analysis reference manual, 4th ed., K2 and K3; four to nine parts from memory. */
    @ParameterizedTest
    @CsvSource({
        "2, 0.7071",
        "3, 0.5231",
        "4, 0.4467",
        "5, 0.4030",
        "6, 0.3742",
        "7, 0.3534",
        "8, 0.3375",
        "9, 0.3249",
        "10, 0.3146"
    })
    void oneGroupHasTheFactorsOfTheManual(int n, double factor) {
        assertEquals(factor, 1 / RangeOfNormal.d2Star(n, 1), 0.00005);
    }

    @ParameterizedTest
    @CsvSource({"-1", "0", "1", "101"})
    void thereAreChartConstantsForTwoToAHundred(int n) {
        assertEquals(
                "n is %d: there are factors for groups of 2 to 100 readings".formatted(n),
                assertThrows(IllegalArgumentException.class, () -> ChartConstants.of(n))
                        .getMessage());
    }

    @Test
    void theLowerLimitOfRangesIsZeroUpToSix() {
        assertEquals(0, ChartConstants.of(6).d3Lower());
        assertEquals(0.076, ChartConstants.of(7).d3Lower(), 0.0005);
    }
}
