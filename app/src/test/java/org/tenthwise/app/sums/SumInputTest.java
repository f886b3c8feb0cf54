package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class SumInputTest {

    private static SumInput given(String written) {
        try {
            return SumInput.written(WrittenObject.read("{" + written + "}"));
        } catch (NotJson e) {
            throw new AssertionError(e);
        }
    }

    private static void refused(String words, Executable asking) {
        CannotAnswer refused = assertThrows(CannotAnswer.class, asking);
        assertEquals(words, refused.getMessage());
        assertEquals(Optional.of(words.split("[ .,:]")[0]), refused.problem().key());
    }

    @Test
    void aLengthIsInTheUnitGiven() {
        assertEquals(
                Length.of("25.4", Unit.MILLIMETRE),
                given("\"unit\":\"in\",\"d\":1.0").length("d"));
        assertEquals(
                Length.of("1", Unit.MILLIMETRE),
                given("\"unit\":\"mm\",\"d\":\"1.0\"").length("d"));
        refused("unit is missing: it is mm or in", () -> given("\"d\":1").length("d"));
        refused("unit is \"cm\": it is mm or in", () -> given("\"unit\":\"cm\""));
        refused("unit is a list: mm or in was expected", () -> given("\"unit\":[\"mm\"]"));
    }

    @Test
    void aFigureNeedsNoUnit() {
        assertEquals(new BigDecimal("1.50"), given("\"k\":1.50").figure("k"));
        assertEquals(Optional.empty(), given("\"k\":1.50").figureIfGiven("n"));
        refused("n is missing", () -> given("\"k\":1.50").figure("n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            {}      | k is a table: a number was expected
            [1]     | k is a list: a number was expected
            null    | k is null: a number was expected
            false   | k is false: a number was expected
            "  "    | k is blank: a number was expected
            "H7"    | k is "H7": it is not a decimal number
            """)
    void whatIsNoFigureIsRefused(String written, String words) {
        refused(words, () -> given("\"k\":" + written).figure("k"));
    }

    @Test
    void aFigureOfNoughtIsNotPositiveAndNotNegative() {
        assertEquals(BigDecimal.ZERO, given("\"k\":0").notNegative("k"));
        refused("k is 0: it must be more than nought", () -> given("\"k\":0").positive("k"));
        refused("k is -0.001: it must not be less than nought", () -> given("\"k\":-0.001")
                .notNegative("k"));
        refused("k is -1: it must be more than nought", () -> given("\"unit\":\"mm\",\"k\":-1")
                .positiveLength("k"));
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "10, 10", "4.000, 4", "1e1, 10"})
    void aWholeNumberMayBeEitherLimit(String written, int whole) {
        assertEquals(whole, given("\"n\":\"" + written + "\"").whole("n", 2, 10));
    }

    @ParameterizedTest
    @CsvSource({"1", "11", "2.5", "-3", "1e9", "1e25"})
    void aWholeNumberOutsideIsRefused(String written) {
        refused("n is " + written + ": it must be a whole number from 2 to 10", () -> given("\"n\":\"" + written + "\"")
                .whole("n", 2, 10));
    }

    @Test
    void aListKeepsItsOrderAndIsNeverEmpty() {
        SumInput given = given("\"unit\":\"mm\",\"v\":[3,\"1.0\",2],\"e\":[],\"w\":[1,\"x\"],\"p\":5");
        assertEquals(List.of(new BigDecimal("3"), new BigDecimal("1.0"), new BigDecimal("2")), given.figures("v"));
        assertEquals(Length.of("1", Unit.MILLIMETRE), given.lengths("v").get(1));
        refused("e is an empty list", () -> given.figures("e"));
        refused("w, item 2, is \"x\": it is not a decimal number", () -> given.figures("w"));
        refused("p must be a list", () -> given.figures("p"));
        refused("q is missing", () -> given.figures("q"));
        refused("v, item 1, must be a table with value", () -> given.tables("v", Set.of("value")));
    }

    @Test
    void groupsAreThreeDeep() {
        assertEquals(
                List.of(List.of(List.of(BigDecimal.ONE, BigDecimal.TEN)), List.of(List.of(BigDecimal.ZERO))),
                given("\"r\":[[[1,10]],[[0]]]").groups("r"));
        refused("r, part 1, is an empty list", () -> given("\"r\":[[]]").groups("r"));
        refused("r, part 1, person 1, is an empty list", () -> given("\"r\":[[[]]]")
                .groups("r"));
        refused("r, part 1, person 2, repeat 1, is a list: a number was expected", () -> given("\"r\":[[[1],[[1]]]]")
                .groups("r"));
        refused(
                "r, part 2, person 1, repeat 2, is \"x\": it is not a decimal number",
                () -> given("\"r\":[[[1,2]],[[1,\"x\"]]]").groups("r"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            5           | r
            [1,10]      | r, part 1,
            [[1],[2]]   | r, part 1, person 1,
            [[[1]],[2]] | r, part 2, person 1,
            """)
    void groupsThatAreTooFlatAreToldHowDeepTheyGo(String written, String place) {
        refused(
                place
                        + " is no list: r takes lists of lists of lists, part by part, person by person, repeat by "
                        + "repeat",
                () -> given("\"r\":" + written).groups("r"));
    }

    @Test
    void tablesKeepTheUnitAndTakeNoOtherKeys() {
        SumInput given = given("\"unit\":\"in\",\"c\":[{\"value\":1},{\"value\":2,\"n\":5}],\"w\":[{\"vaule\":1}]");
        List<SumInput> tables = given.tables("c", Set.of("value", "n"));
        assertEquals(Length.of("50.8", Unit.MILLIMETRE), tables.get(1).length("value"));
        assertFalse(tables.get(0).has("n"));
        refused(
                "w, item 1, has an unknown key vaule: it takes n, value",
                () -> given.tables("w", Set.of("value", "n")));
    }

    @Test
    void whatTheModelRefusesIsSaidOfTheKeyAndWhatWasTyped() {
        SumInput given = given("\"f\":\"1.50\",\"w\":\"H7\",\"l\":[1]");
        refused("f is 1.50: not so", () -> given.about("f", SumInputTest::never));
        refused("w is \"H7\": not so", () -> given.about("w", SumInputTest::never));
        refused("l: not so", () -> given.about("l", SumInputTest::never));
        refused("f is 1.50: it is too small", () -> given.about("f", "it is too small", SumInputTest::never));
        assertEquals("done", given.about("f", () -> "done"));
    }

    private static String never() {
        throw new IllegalArgumentException("not so");
    }

    @Test
    void whatIsRefusedAboutATableSaysWhichOneItIs() {
        List<SumInput> tables = given("\"c\":[{\"value\":1},{\"value\":-1}]").tables("c", Set.of("value"));
        refused(
                "c, item 2: value is -1: it must be more than nought",
                () -> SumInput.each("c", tables, table -> table.positive("value")));
        assertEquals(
                List.of(BigDecimal.ONE, new BigDecimal("-1")),
                SumInput.each("c", tables, table -> table.figure("value")));
    }

    @Test
    void aChoiceIsOneOfItsWords() {
        Map<String, Integer> sides = Map.of("outside", 1, "inside", -1);
        assertEquals(-1, given("\"side\":\"inside\"").choice("side", sides));
        refused("side is \"Inside\": it is one of inside, outside", () -> given("\"side\":\"Inside\"")
                .choice("side", sides));
        refused("side is a list: one of inside, outside was expected", () -> given("\"side\":[\"inside\"]")
                .choice("side", sides));
        refused("side is null: a word was expected", () -> given("\"side\":null")
                .text("side"));
    }

    @Test
    void whatIsBlankInAFormWasNotGiven() {
        SumInput given = SumInput.of(Unit.MILLIMETRE, Map.of("a", " 1.5 ", "b", "  "));
        assertEquals(new BigDecimal("1.5"), given.figure("a"));
        assertFalse(given.has("b"));
    }
}
