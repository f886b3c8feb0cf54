package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class ZeroDriftTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** Common practice: more than one division. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0,      0.001,  0.001, 0.001,  false
        0.002,  0.0009, 0.001, -0.0011, true
        0.0005, 0.0005, 0.001, 0,      false
        """)
    void theZeroHasDriftedIfTheMasterReadsAnotherDivision(
            String before, String after, String division, String drift, boolean again) {
        assertEquals(new ZeroDrift(mm(drift), again), ZeroDrift.between(mm(before), mm(after), mm(division)));
    }

    @Test
    void aDivisionIsMoreThanZero() {
        assertEquals(
                "division is 0 mm: it must be more than zero",
                assertThrows(IllegalArgumentException.class, () -> ZeroDrift.between(mm("0"), mm("0"), mm("0")))
                        .getMessage());
    }
}
