package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenTest {

    @Test
    void zerosThatWereWrittenStay() {
        Written written = new Written("35.010", Unit.MILLIMETRE);
        assertEquals("35.010 mm", written.toString());
        assertEquals(3, written.places());
        assertEquals(Length.of("35.01", Unit.MILLIMETRE), written.length());
    }

    @Test
    void theSameLengthWrittenOtherwiseIsAnotherFigure() {
        assertNotEquals(new Written("1.0", Unit.INCH), new Written("1.00", Unit.INCH));
        assertEquals(new Written("1.0", Unit.INCH).length(), new Written("25.40", Unit.MILLIMETRE).length());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0.002", "+0.002", "1234567890.0123456789"})
    void aPlainDecimalIsTaken(String text) {
        assertTrue(Written.isPlainDecimal(text));
        assertEquals(0, new BigDecimal(text).compareTo(new Written(text, Unit.MILLIMETRE).figure()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", ".5", "5.", "1e3", "1,000.0", "1,5", "--1", "- 1", "NaN", "12345678901", "0.12345678901"
            })
    void anythingElseIsRefused(String text) {
        assertFalse(Written.isPlainDecimal(text));
        assertEquals(
                "\"" + text + "\" is not a plain decimal number",
                assertThrows(IllegalArgumentException.class, () -> new Written(text, Unit.INCH))
                        .getMessage());
    }

    @Test
    void aFigureIsWrittenOutInFull() {
        assertEquals(new Written("1000", Unit.MILLIMETRE), Written.of(new BigDecimal("1E+3"), Unit.MILLIMETRE));
    }

    @Test
    void aUnitIsKnownByItsSymbol() {
        assertEquals(Unit.INCH, Unit.ofSymbol("in").orElseThrow());
        assertTrue(Unit.ofSymbol("cm").isEmpty());
    }
}
