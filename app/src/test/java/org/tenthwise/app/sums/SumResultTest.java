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
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

class SumResultTest {

    private static final Length AN_INCH = Length.of("25.4", Unit.MILLIMETRE);

    private static final Output<List<Length>> LENGTHS = Output.lengths("l");

    private static SumResult.Writing in(Unit unit) {
        return SumDescription.named("any").in(unit);
    }

    private static String text(SumResult result, String key) {
        return Asking.at(result, key);
    }

    @Test
    void aLengthComesOutInTheUnitWithItsPlaces() {
        SumResult inch = in(Unit.INCH)
                .put(Output.length("d"), AN_INCH)
                .put(Output.length("four"), AN_INCH, 4)
                .done();
        assertEquals("1.00000000", text(inch, "d"));
        assertEquals("1.0000", text(inch, "four"));
        assertEquals(
                "25.400000",
                text(in(Unit.MILLIMETRE).put(Output.length("d"), AN_INCH).done(), "d"));
    }

    /** Ties go to the even digit, either way from zero. */
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
                        in(Unit.MILLIMETRE)
                                .put(Output.length("d"), Length.of(millimetres, Unit.MILLIMETRE), 3)
                                .done(),
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
        String text = text(in(Unit.MILLIMETRE).put(Output.figure("f"), figure).done(), "f");
        assertEquals(new BigDecimal(printed), new BigDecimal(text).setScale(new BigDecimal(printed).scale()));
        assertEquals(-1, text.indexOf('E'));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNotHandedOut(double figure) {
        assertEquals(
                "f gives no number with these inputs",
                assertThrows(CannotAnswer.class, () -> in(Unit.MILLIMETRE).put(Output.figure("f"), figure))
                        .getMessage());
    }

    @Test
    void resultsAndNotesKeepTheirOrder() {
        SumResult answer = in(Unit.MILLIMETRE)
                .put(Output.word("z", "pass", "fail"), "pass")
                .note(Message.of("as-said", "One."))
                .put(Output.whole("a"), 3)
                .put(Output.exact("m"), new BigDecimal("1E+2"))
                .put(LENGTHS, List.of(AN_INCH, Length.ZERO))
                .note(Message.of("as-said", "Two."))
                .on(Message.of("as-said", "ISO 1:2022"));
        assertEquals(
                List.of("z", "a", "m", "l"),
                List.copyOf(answer.written().values().keySet()));
        assertEquals(
                List.of("One.", "Two."),
                answer.notes().stream().map(Message::toString).toList());
        assertEquals("100", text(answer, "m"));
        assertEquals(
                SumValue.Many.of(List.of("25.400000", "0.000000")),
                answer.written().values().get("l"));
        assertEquals(Optional.of(List.of(AN_INCH, Length.ZERO)), answer.find(LENGTHS));
        assertEquals(Optional.empty(), answer.find(Output.length("x")));
    }
}
