package org.tenthwise.model.compute.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class AtTwentyTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static AtTwenty with(String partAlpha, String partAt, String gaugeAlpha, String gaugeAt) {
        return new AtTwenty(Expansion.of(partAlpha), Celsius.of(partAt), Expansion.of(gaugeAlpha), Celsius.of(gaugeAt));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # read, part: expansion, temperature, gauge: expansion, temperature, size at 20, within
        # published: National Physical Laboratory, How do I correct lengths to 20 °C?, npl.co.uk, 2010, printed to 0.001
        500.035,   11.7, 23.7, 11.7, 20,   500.013,   0.0005
        # published: JCGM 100:2008, H.1: 50.000 623 + 0.000 215 = 50.000 838, both 0.1 below 20 °C, printed to 0.000 001
        50.000838, 11.5, 19.9, 11.5, 19.9, 50.000838, 0
        # worked by hand from the formula: aluminium, nickel-iron, steel on a granite column, stainless steel, cast iron
        50,        23.6, 26,   11.5, 26,   49.996371, 0.0000005
        100,       1.6,  22,   11.5, 22,   100.001980, 0.0000005
        300,       12.3, 30,   6.3,  30,   299.982002, 0.0000005
        25,        17.2, 24,   11.5, 21,   24.998568, 0.0000005
        200.05,    11.4, 28,   11.5, 25,   200.043259, 0.0000005
        """)
    void sizeAtTwentyDegrees(
            String read,
            String partAlpha,
            String partAt,
            String gaugeAlpha,
            String gaugeAt,
            String size,
            String within) {
        AtTwenty sum = with(partAlpha, partAt, gaugeAlpha, gaugeAt);
        Length found = sum.size(mm(read));
        assertTrue(!found.minus(mm(size)).abs().isAbove(mm(within)), found::toString);
        assertEquals(found.minus(mm(read)), sum.correction(mm(read)));
    }

    /**
     * Growth L·α·Δt of a body, worked by hand: the gauge stands for the body, the part for the same length kept at 20
     * °C.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        250, 10.8, 15, -0.0135
        25,  23.6, 24, 0.00236
        100, 11.5, 21, 0.00115
        """)
    void aLengthGrowsByItsExpansion(String length, String alpha, String at, String growth) {
        assertEquals(mm(growth), with("0", "20", alpha, at).correction(mm(length)));
    }

    @Test
    void oneMaterialAtOneTemperatureNeedsNoCorrection() {
        assertEquals(Length.ZERO, with("11.5", "31.4", "11.5", "31.4").correction(mm("199.9873")));
    }

    @Test
    void aWarmPartOfTheGaugesMaterialReadsLarge() {
        assertTrue(with("11.5", "25", "11.5", "20").correction(mm("100")).signum() < 0);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0.0000115, Expansion 0.0000115 is too small to be in 1e-6 per °C: steel is 11.5
        11500,     'Expansion 11500 is not from -20 to 300, in 1e-6 per °C'
        """)
    void anExpansionWrittenInAnotherUnitIsRefused(String written, String why) {
        assertEquals(
                why,
                assertThrows(IllegalArgumentException.class, () -> Expansion.of(written))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource({"-273.15", "1000.1"})
    void noSizeIsTakenAtSuchATemperature(String degrees) {
        assertThrows(IllegalArgumentException.class, () -> Celsius.of(degrees));
    }
}
