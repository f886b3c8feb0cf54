package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.sums.SumResult.OutputValue;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class SumResultTest {

    private static final Length AN_INCH = Length.of("25.4", Unit.MILLIMETRE);

    private static String text(SumResult answer, String key) {
        return ((OutputValue.Plain) answer.at(key).orElseThrow()).text();
    }

    @Test
    void aLengthComesOutInTheUnitWithItsPlaces() {
        SumResult inch = SumResult.in(Unit.INCH)
                .length("d", AN_INCH)
                .length("four", AN_INCH, 4)
                .on("b");
        assertEquals("1.00000000", text(inch, "d"));
        assertEquals("1.0000", text(inch, "four"));
        assertEquals(
                "25.400000",
                text(SumResult.in(Unit.MILLIMETRE).length("d", AN_INCH).on("b"), "d"));
    }

    /** Ties go to the even digit, either way from nought. */
    @ParameterizedTest
    @CsvSource({
        "0.0005, 0.000",
        "0.0015, 0.002",
        "0.0025, 0.002",
        "-0.0015, -0.002",
        "-0.0005, 0.000",
        "0.00050001, 0.001",
        "100, 100.000"
    })
    void placesOfAStandardAreRoundedHalfEven(String millimetres, String printed) {
        assertEquals(
                printed,
                text(
                        SumResult.in(Unit.MILLIMETRE)
                                .length("d", Length.of(millimetres, Unit.MILLIMETRE), 3)
                                .on("b"),
                        "d"));
    }

    /** To twelve figures, at least eight places and never an exponent; arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.00000000",
        "0.5, 0.50000000",
        "1e20, 100000000000000000000.00000000",
        "0.1, 0.10000000",
        "0.333333333333333333, 0.333333333333",
        "123456789.123456789, 123456789.12300000",
        "-2, -2.00000000",
        "1.5e-13, 0.00000000000015",
        "1.23456789e-32, 0.0000000000000000000000000000000123456789",
        "1e-300, 0.0000000000000000000000000000000000000000"
    })
    void aNumberIsPlainDigits(double figure, String printed) {
        String text = text(SumResult.in(Unit.MILLIMETRE).figure("f", figure).on("b"), "f");
        assertEquals(new BigDecimal(printed), new BigDecimal(text).setScale(new BigDecimal(printed).scale()));
        assertEquals(-1, text.indexOf('E'));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNotHandedOut(double figure) {
        assertEquals(
                "f does not come to a number with the figures given",
                assertThrows(CannotAnswer.class, () -> SumResult.in(Unit.MILLIMETRE)
                                .figure("f", figure))
                        .getMessage());
    }

    @Test
    void resultsAndNotesKeepTheirOrder() {
        SumResult answer = SumResult.in(Unit.MILLIMETRE)
                .word("z", "pass")
                .note("One.")
                .whole("a", 3)
                .exact("m", new BigDecimal("1E+2"))
                .lengths("l", List.of(AN_INCH, Length.ZERO))
                .note("Two.")
                .on("ISO 1:2022");
        assertEquals(
                List.of("z", "a", "m", "l"),
                answer.results().stream().map(SumResult.Result::key).toList());
        assertEquals(List.of("One.", "Two."), answer.notes());
        assertEquals("100", text(answer, "m"));
        assertEquals(
                new OutputValue.Many(List.of(new OutputValue.Plain("25.400000"), new OutputValue.Plain("0.000000"))),
                answer.at("l").orElseThrow());
        assertEquals(Optional.empty(), answer.at("x"));
    }
}
