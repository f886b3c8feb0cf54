package org.tenthwise.checklists.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.words.Message;

class TomlTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"35.010", "0.0000000001", "-0.012", "1234567890.0123456789", "0.10", "30", "0.000"})
    void aDecimalKeepsEveryPlace(String figure) {
        assertEquals(
                new RawValue.Number(new Spot(1, 1), new BigDecimal(figure)),
                values("size = " + figure).get("size"));
    }

    @Test
    void aPlusSignIsNoPartOfTheFigure() {
        assertEquals(
                new RawValue.Number(new Spot(1, 1), new BigDecimal("0.013")),
                values("size = +0.013").get("size"));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            1e3, 1e3
            1.5E-2, 1.5E-2
            1_000.5, 1_000.5
            0x3E8, 0x3E8
            0o17, 0o17
            0b11, 0b11
            inf, inf
            -inf, -inf
            nan, nan
            12345678901, 12345678901
            0.00000000001, 0.00000000001
            2026-11-25, a date or time
            07:30:00, a date or time
            """)
    void whatIsNoPlainDecimalIsOdd(String written, String what) {
        RawValue.Odd odd = assertInstanceOf(
                RawValue.Odd.class, values("\nsize = " + written + " # so").get("size"));
        assertEquals(new Spot(2, 1), odd.spot());
        assertEquals(what, odd.what().toString());
    }

    @Test
    void everyKeyAndEveryItemKnowsItsSpot() {
        Map<String, RawValue> values = values(
                """
                # a plan
                  head = "Ø 𝛼", "q k" . 'z' = 1
                """
                                .replace(", ", "\n")
                        + """
                list = [ 1.0,
                  { "a\\"=" = 2.50, b = true } ]
                [[step]]
                  "number" = 7
                [[step]]
                number = 8
                [[step.pass]]
                why = "cut"
                """);
        assertEquals(new Spot(2, 3), values.get("head").spot());
        RawTable quoted = (RawTable) values.get("q k");
        assertEquals(
                new RawValue.Number(new Spot(3, 1), BigDecimal.ONE),
                quoted.values().get("z"));
        List<RawValue> list = ((RawList) values.get("list")).items();
        assertEquals(new RawValue.Number(new Spot(4, 10), new BigDecimal("1.0")), list.get(0));
        RawTable inline = (RawTable) list.get(1);
        assertEquals(
                new RawValue.Number(new Spot(5, 5), new BigDecimal("2.50")),
                inline.values().get("a\"="));
        assertEquals(new RawValue.Truth(new Spot(5, 20), true), inline.values().get("b"));
        List<RawValue> steps = ((RawList) values.get("step")).items();
        assertEquals(new Spot(6, 1), steps.get(0).spot());
        assertEquals(
                new RawValue.Number(new Spot(7, 3), new BigDecimal("7")),
                ((RawTable) steps.get(0)).values().get("number"));
        RawList passes = (RawList) ((RawTable) steps.get(1)).values().get("pass");
        assertEquals(
                new RawValue.Text(new Spot(11, 1), "cut"),
                ((RawTable) passes.items().get(0)).values().get("why"));
    }

    @Test
    void columnsAreCountedInCharactersAsAPersonCountsThem() {
        Map<String, RawValue> values = values("line = [\"𝛼𝛼\", 1.50]");
        assertEquals(
                new RawValue.Number(new Spot(1, 15), new BigDecimal("1.50")),
                ((RawList) values.get("line")).items().get(1));
    }

    @Test
    void keysKeepTheOrderOfTheText() {
        assertEquals(
                List.of("z", "a", "m"),
                List.copyOf(values("z = 1\na = 2\nm = 3").keySet()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\uFEFFa = 1", "a = 1\r\n", "a = 1"})
    void aByteOrderMarkAndWindowsLineEndsDoNoHarm(String text) {
        assertEquals(
                new RawValue.Number(new Spot(1, 1), BigDecimal.ONE),
                values(text).get("a"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a = 1,\nb = ", "b = ", "a = 1\na = "})
    void bracketsWithoutEndAreRefusedAndDoNotEndTheProgram(String before) {
        assertInstanceOf(TomlReading.Unreadable.class, new TomlText().read(before + "[".repeat(50_000)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"# %s", "a = \"%s\"", "a = '%s'", "a = \"\"\"\n%s\n\"\"\"", "a = \"\\\"%s\""})
    void bracketsInRemarksAndTextsLieInNothing(String line) {
        values(line.formatted("[{".repeat(50)));
    }

    @Test
    void asDeepAsNoPlanGoesIsStillRead() {
        values("a = " + "[".repeat(32) + "]".repeat(32));
        assertInstanceOf(TomlReading.Unreadable.class, new TomlText().read("a = " + "[".repeat(33) + "]".repeat(33)));
    }

    @Test
    void aFigureOfThousandsOfPlacesIsOdd() {
        String figure = "1." + "0".repeat(5000);
        assertEquals(
                new RawValue.Odd(new Spot(1, 1), Message.of("as-said", figure)),
                values("size = " + figure).get("size"));
    }

    @Test
    void aTextBeyondAllPlansIsRefused() {
        TomlReading.Unreadable refused =
                assertInstanceOf(TomlReading.Unreadable.class, new TomlText().read("# " + "x".repeat(1_000_000)));
        assertEquals(
                "longer than 1000000 characters", refused.flaws().get(0).what().toString());
    }

    private static Map<String, RawValue> values(String text) {
        return assertInstanceOf(TomlReading.Readable.class, new TomlText().read(text))
                .top()
                .values();
    }
}
