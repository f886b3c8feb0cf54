package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NanometresTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # half to even at the sixth place of a millimetre; arithmetic
        0.0000005,  0
        0.0000015,  0.000002
        0.0000025,  0.000002
        -0.0000015, -0.000002
        12.3456784, 12.345678
        12.3456786, 12.345679
        """)
    void aSumIsRoundedHalfEvenToANanometre(double millimetres, String rounded) {
        assertEquals(Length.of(rounded, Unit.MILLIMETRE), Nanometres.round(millimetres));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aSumThatCameToNothingIsNoLength(double millimetres) {
        assertThrows(ArithmeticException.class, () -> Nanometres.round(millimetres));
    }

    @Test
    void aLengthInWholeNanometresComesBackUnchanged() {
        Length length = Length.of("123.456789", Unit.MILLIMETRE);
        assertEquals(length, Nanometres.round(Nanometres.of(length)));
    }
}
