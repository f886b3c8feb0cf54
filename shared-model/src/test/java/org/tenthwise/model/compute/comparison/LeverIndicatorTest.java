package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class LeverIndicatorTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # Mitutoyo, catalogue 2019, Quick guide to dial test indicators, page index 435: a reading, and factors of two
        # figures
        0.200, 20, 0.188
        1,     20, 0.94
        1,     40, 0.77
        1,     50, 0.64
        # cosine of 60 degrees is one half
        -0.3,  60, -0.15
        0.2,   0,  0.2
        """)
    void theTrueReadingIsTheReadingTimesTheCosine(String reading, String angle, BigDecimal expected) {
        assertEquals(
                expected,
                LeverIndicator.trueReading(mm(reading), new BigDecimal(angle))
                        .millimetres()
                        .setScale(expected.scale(), RoundingMode.HALF_EVEN));
    }

    @Test
    void theAngleIsSteepAbove30AndHardlyMattersBelow10() {
        assertFalse(LeverIndicator.isSteep(new BigDecimal("30")));
        assertTrue(LeverIndicator.isSteep(new BigDecimal("30.1")));
        assertFalse(LeverIndicator.hardlyMatters(new BigDecimal("10")));
        assertTrue(LeverIndicator.hardlyMatters(new BigDecimal("9.9")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"90", "-0.1", "200"})
    void aLeverThatStandsUprightReadsNothing(String angle) {
        assertEquals(
                "angle is %s: the stylus of a lever indicator lies at 0° or more to the surface, and at less than 90°"
                        .formatted(angle),
                assertThrows(
                                IllegalArgumentException.class,
                                () -> LeverIndicator.trueReading(mm("0.1"), new BigDecimal(angle)))
                        .getMessage());
    }
}
