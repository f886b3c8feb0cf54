package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

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
                given("\"unit\":\"in\",\"d\":1.0").get(Input.length("d")));
        assertEquals(
                Length.of("1", Unit.MILLIMETRE),
                given("\"unit\":\"mm\",\"d\":\"1.0\"").get(Input.length("d")));
        refused("unit is missing: it is mm or in", () -> given("\"d\":1").get(Input.length("d")));
        refused("unit is \"cm\": it is mm or in", () -> given("\"unit\":\"cm\""));
        refused("unit is \"°\": it is mm or in", () -> given("\"unit\":\"°\""));
        refused("unit is a list: mm or in was expected", () -> given("\"unit\":[\"mm\"]"));
    }

    @Test
    void aFigureNeedsNoUnit() {
        assertEquals(new BigDecimal("1.50"), given("\"k\":1.50").get(Input.figure("k")));
        assertEquals(Optional.empty(), given("\"k\":1.50").find(Input.figure("n")));
        refused("n is missing", () -> given("\"k\":1.50").get(Input.figure("n")));
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
        refused(words, () -> given("\"k\":" + written).get(Input.figure("k")));
    }

    @Test
    void aFigureOfZeroIsNotPositiveAndNotNegative() {
        assertEquals(BigDecimal.ZERO, given("\"k\":0").get(Input.notNegative("k")));
        refused("k is 0: it must be more than zero", () -> given("\"k\":0").get(Input.positive("k")));
        refused("k is -0.001: it must not be less than zero", () -> given("\"k\":-0.001")
                .get(Input.notNegative("k")));
        refused("k is -1: it must be more than zero", () -> given("\"unit\":\"mm\",\"k\":-1")
                .get(Input.positiveLength("k")));
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "10, 10", "4.000, 4", "1e1, 10"})
    void aWholeNumberMayBeEitherLimit(String written, int whole) {
        assertEquals(whole, given("\"n\":\"" + written + "\"").get(Input.whole("n", 2, 10)));
    }

    @ParameterizedTest
    @CsvSource({"1", "11", "2.5", "-3", "1e9", "1e25"})
    void aWholeNumberOutsideIsRefused(String written) {
        refused("n is " + written + ": it must be a whole number from 2 to 10", () -> given("\"n\":\"" + written + "\"")
                .get(Input.whole("n", 2, 10)));
    }

    @Test
    void aListKeepsItsOrderAndIsNeverEmpty() {
        SumInput given = given("\"unit\":\"mm\",\"v\":[3,\"1.0\",2],\"e\":[],\"w\":[1,\"x\"],\"p\":5");
        assertEquals(
                List.of(new BigDecimal("3"), new BigDecimal("1.0"), new BigDecimal("2")),
                given.get(Input.figures("v")));
        assertEquals(
                Length.of("1", Unit.MILLIMETRE), given.get(Input.lengths("v")).get(1));
        refused("e is an empty list", () -> given.get(Input.figures("e")));
        refused("w, item 2, is \"x\": it is not a decimal number", () -> given.get(Input.figures("w")));
        refused("p must be a list", () -> given.get(Input.figures("p")));
        refused("q is missing", () -> given.get(Input.figures("q")));
        refused("v, item 1, must be a table with n, value", () -> given.get(tables("v")));
    }

    @Test
    void groupsAreThreeDeep() {
        assertEquals(
                List.of(List.of(List.of(BigDecimal.ONE, BigDecimal.TEN)), List.of(List.of(BigDecimal.ZERO))),
                given("\"r\":[[[1,10]],[[0]]]").get(Input.groups("r")));
        refused("r, part 1, is an empty list", () -> given("\"r\":[[]]").get(Input.groups("r")));
        refused("r, part 1, person 1, is an empty list", () -> given("\"r\":[[[]]]")
                .get(Input.groups("r")));
        refused("r, part 1, person 2, repeat 1, is a list: a number was expected", () -> given("\"r\":[[[1],[[1]]]]")
                .get(Input.groups("r")));
        refused(
                "r, part 2, person 1, repeat 2, is \"x\": it is not a decimal number",
                () -> given("\"r\":[[[1,2]],[[1,\"x\"]]]").get(Input.groups("r")));
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
                place + " is not a list: r takes lists of lists of lists, by part, by person, by repeat",
                () -> given("\"r\":" + written).get(Input.groups("r")));
    }

    @Test
    void tablesKeepTheUnitAndTakeNoOtherKeys() {
        SumInput given = given("\"unit\":\"in\",\"c\":[{\"value\":1},{\"value\":2,\"n\":5}],\"w\":[{\"vaule\":1}]");
        List<SumInput> tables = given.get(tables("c"));
        assertEquals(Length.of("50.8", Unit.MILLIMETRE), tables.get(1).get(Input.length("value")));
        assertFalse(tables.get(0).has(Input.figure("n")));
        refused("w, item 1, has an unknown key vaule: it takes n, value", () -> given.get(tables("w")));
    }

    @Test
    void whatTheModelRefusesIsSaidOfTheKeyAndWhatWasTyped() {
        SumInput given = given("\"f\":\"1.50\",\"w\":\"H7\",\"l\":[1],\"step\":0.1");
        refused("f is 1.50: not so", () -> given.about(Input.name("f"), SumInputTest::never));
        refused("w is \"H7\": not so", () -> given.about(Input.name("w"), SumInputTest::never));
        refused("l: not so", () -> given.about(Input.name("l"), SumInputTest::never));
        refused(
                "step is 0.1: it must not be less than least_step, nor so small that the hole takes a thousand pecks",
                () -> given.about(Input.name("step"), "too-small", SumInputTest::never));
        assertEquals("done", given.about(Input.name("f"), () -> "done"));
    }

    private static String never() {
        throw new IllegalArgumentException("not so");
    }

    @Test
    void whatIsRefusedAboutATableSaysWhichOneItIs() {
        List<SumInput> tables = given("\"c\":[{\"value\":1},{\"value\":-1}]").get(tables("c"));
        refused(
                "c, item 2: value is -1: it must be more than zero",
                () -> SumInput.each(tables("c"), tables, table -> table.get(Input.positive("value"))));
        assertEquals(
                List.of(BigDecimal.ONE, new BigDecimal("-1")),
                SumInput.each(tables("c"), tables, table -> table.get(Input.figure("value"))));
    }

    @Test
    void aChoiceIsOneOfItsWords() {
        Input<Integer> side = Input.choice("side", "outside", 1, "inside", -1);
        assertEquals(-1, given("\"side\":\"inside\"").get(side));
        refused("side is \"Inside\": it is one of inside, outside", () -> given("\"side\":\"Inside\"")
                .get(side));
        refused("side is a list: one of inside, outside was expected", () -> given("\"side\":[\"inside\"]")
                .get(side));
        refused("side is null: a word was expected", () -> given("\"side\":null")
                .text(side));
    }

    @Test
    void whatIsNotRightIsRefusedWithItsReason() {
        Input<BigDecimal> flat = Input.figure("k")
                .that(
                        angle -> angle.signum() == 0,
                        Message.of("as-said", "0"),
                        Message.of("as-said", "it must be flat"));
        assertEquals(BigDecimal.ZERO, given("\"k\":0").get(flat));
        refused("k is 1.0: it must be flat", () -> given("\"k\":1.0").get(flat));
        assertEquals("k", given("\"k\":0").get(flat.as(angle -> "k")));
        refused("k is 0: not so", () -> given("\"k\":0").get(flat.as(angle -> never())));
    }

    private static Input<List<SumInput>> tables(String key) {
        return Input.tables(key, Input.figure("value"), Input.whole("n", 1, 9).optional());
    }
}
