package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class RechuckingTest {

    /** Common practice: more than half of the movement. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0.010000, 0.020, false
        0.010001, 0.020, true
        0,        0.020, false
        0,        0,     false
        """)
    void movingTheWorkIsInVainWhereMoreThanHalfIsForm(String residual, String movement, boolean inVain) {
        assertEquals(
                inVain,
                Rechucking.isInVain(Length.of(residual, Unit.MILLIMETRE), Length.of(movement, Unit.MILLIMETRE)));
    }
}
