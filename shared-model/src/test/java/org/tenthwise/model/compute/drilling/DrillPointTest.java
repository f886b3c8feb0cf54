package org.tenthwise.model.compute.drilling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class DrillPointTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # geometry, by hand: 8 / 2 / tan 45°; 10 / 2 / tan 59°, tan 59° = 1.664279; 6 / 2 / tan 30°
        8,  90,  4
        10, 118, 3.004303
        6,  60,  5.196152
        6,  180, 0
        """)
    void theConeGoesBeyondTheFullDiameter(String diameter, BigDecimal angle, String length) {
        assertEquals(
                Length.of(length, Unit.MILLIMETRE), DrillPoint.length(Length.of(diameter, Unit.MILLIMETRE), angle));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        0,  118
        10, 0
        10, 181
        """)
    void whatIsNoDrillIsRefused(String diameter, BigDecimal angle) {
        assertThrows(
                IllegalArgumentException.class, () -> DrillPoint.length(Length.of(diameter, Unit.MILLIMETRE), angle));
    }
}
