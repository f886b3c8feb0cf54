package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class FiguresTest {

    private static final List<Length> BORE =
            List.of(Length.of("30.000", Unit.MILLIMETRE), Length.of("30.021", Unit.MILLIMETRE));

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # size,      shown        limits 30.000 and 30.021, three places asked for
            30.015,      30.015
            30.0154,     30.015
            30.021,      30.021
            30.0214,     30.0214
            30.02104,    30.02104
            30.0207,     30.0207
            29.9996,     29.9996
            29.9,        29.900
            """)
    void aSizeNeverReadsAsOnOrBeyondALimitItIsNot(String size, String shown) {
        assertEquals(shown, Figures.beside(BORE, Length.of(size, Unit.MILLIMETRE), Unit.MILLIMETRE, 3));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # length,  places, shown
            0.0004,    4,      0.0004
            0.0004,    3,      0.0004
            -0.0016,   4,      −0.0016
            0,         3,      0.000
            1.25,      1,      1.3
            """)
    void aLengthThatIsNotZeroNeverReadsAsZero(String length, int places, String shown) {
        assertEquals(shown, Figures.plain(Length.of(length, Unit.INCH), Unit.INCH, places));
    }

    @Test
    void theSignIsSaidWhereAskedFor() {
        assertEquals("+0.018", Figures.signed(Length.of("0.018", Unit.MILLIMETRE), Unit.MILLIMETRE, 3));
        assertEquals("−0.018", Figures.signed(Length.of("-0.018", Unit.MILLIMETRE), Unit.MILLIMETRE, 3));
        assertEquals("0.000", Figures.signed(Length.ZERO, Unit.MILLIMETRE, 3));
    }

    @Test
    void whatWasWrittenStaysAsWritten() {
        assertEquals("−0.010", Figures.written(new Written("-0.010", Unit.MILLIMETRE)));
    }
}
