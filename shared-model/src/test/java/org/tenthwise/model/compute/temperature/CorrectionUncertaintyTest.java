package org.tenthwise.model.compute.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class CorrectionUncertaintyTest {

    private static Length u(String size, String alpha, String at, String ofTemperature, String ofExpansion) {
        return CorrectionUncertainty.of(
                Length.of(size, Unit.MILLIMETRE),
                Expansion.of(alpha),
                Celsius.of(at),
                new BigDecimal(ofTemperature),
                new BigDecimal(ofExpansion));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # size, expansion, at, u of temperature, u of expansion, u in mm, within
        # from memory: JCGM 100:2008, H.1.3.5, ±1e-6 rectangular at 0.1 below 20 °C, printed as 2.9 nm
        50.000623, 11.5, 19.9, 0,        0.577350, 0.0000029, 0.00000005
        # worked by hand from the formula: ±0.5 °C and ±1e-6 rectangular; ±1 °C rectangular and 1.2e-6
        50,        11.5, 23,   0.288675, 0.577350, 0.0001872, 0.00000005
        100,       23.1, 25,   0.577350, 1.2,      0.0014624, 0.00000005
        """)
    void bothTermsAddAsSquares(
            String size, String alpha, String at, String ofTemperature, String ofExpansion, String u, String within) {
        Length found = u(size, alpha, at, ofTemperature, ofExpansion);
        assertTrue(
                !found.minus(Length.of(u, Unit.MILLIMETRE)).abs().isAbove(Length.of(within, Unit.MILLIMETRE)),
                found::toString);
    }

    @Test
    void whatIsKnownExactlyHasNone() {
        assertEquals(Length.ZERO, u("50", "11.5", "23", "0", "0"));
    }

    @Test
    void lessThanZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> u("50", "11.5", "23", "-0.1", "0"));
    }
}
