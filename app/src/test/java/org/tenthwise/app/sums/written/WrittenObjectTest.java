package org.tenthwise.app.sums.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.sums.SumValue;

class WrittenObjectTest {

    private static SumValue plain(String text) {
        return new SumValue.Text(text);
    }

    @Test
    void everyKindOfValueIsTold() throws NotJson {
        assertEquals(
                Map.of(
                        "a",
                        plain("1.50"),
                        "b",
                        plain("1.50"),
                        "c",
                        new SumValue.Neither("true"),
                        "d",
                        new SumValue.Neither("null"),
                        "e",
                        new SumValue.Many(List.of(plain("1"), new SumValue.Many(List.of()))),
                        "f",
                        new SumValue.Fields(Map.of("g", plain("")))),
                WrittenObject.read(
                        "{\"a\":1.50,\"b\":\"1.50\",\"c\":true,\"d\":null,\"e\":[1,[]],\"f\":{\"g\":\"\"}}"));
    }

    @Test
    void keysComeInTheOrderTheyAreWritten() throws NotJson {
        Map<String, SumValue> read = WrittenObject.read(" {\"z\":1,\"a\":{\"y\":1,\"b\":2,\"x\":3},\"m\":3} ");
        assertEquals(List.of("z", "a", "m"), new ArrayList<>(read.keySet()));
        assertEquals(
                List.of("y", "b", "x"),
                new ArrayList<>(((SumValue.Fields) read.get("a")).values().keySet()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0.1", "-0.0", "1e-7", "1.000000000000000000000001", "123456789012345678901234567890", "1E400"})
    void aNumberKeepsItsDigits(String digits) throws NotJson {
        assertEquals(plain(digits), WrittenObject.read("{\"a\":" + digits + "}").get("a"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            {"a":1,"a":1}       | a is given twice: give it once
            {"a":{"b":1,"b":2}} | b is given twice: give it once
            {"a":1}}            | The line is not JSON: something is wrong at character 8, near "{"a":1}}", after the key a
            {"a":1},            | The line is not JSON: something is wrong at character 8, near "{"a":1},", after the key a
            {"a":1} 2           | Something follows the end of the object: "…2"
            {"a":1} // said     | The line is not JSON: something is wrong at character 9, near "{"a":1} // said", after the key a
            {a:1}               | The line is not JSON: something is wrong at character 2, near "{a:1}"
            {'a':1}             | The line is not JSON: something is wrong at character 2, near "{'a':1}"
            {"a":1,}            | The line is not JSON: something is wrong at character 8, near "{"a":1,}", after the key a
            {"a":[1,]}          | The line is not JSON: something is wrong at character 9, near "{"a":[1,]}", under the key a
            {"a":1 "b":2}       | The line is not JSON: something is wrong at character 8, near "{"a":1 "b":2}", after the key a
            {"a":1, "b" 2}      | The line is not JSON: something is wrong at character 13, near "{"a":1, "b" 2}", under the key b
            {"a":"\\x"}         | The line is not JSON: something is wrong at character 8, near "{"a":"\\x"}", under the key a
            {"a":"b             | The line is not JSON: it ends in the middle, under the key a
            {"\\udc00":1}       | A key holds half of a character
            """)
    void whatIsNotOneObjectIsRefused(String text, String words) {
        assertEquals(
                words,
                assertThrows(NotJson.class, () -> WrittenObject.read(text)).getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            {"a":1,"b":+3}            | 12 | b
            {"a":1,"b":.5}            | 12 | b
            {"a":1,"b" : 2.}          | 14 | b
            {"a":1,"b":03}            | 12 | b
            {"a":1,"b":-Infinity}     | 12 | b
            {"a":1,"b":NaN}           | 12 | b
            {"a":1,"b":1/4}           | 12 | b
            {"a":1,"b":12mm}          | 12 | b
            {"a":1,"b":H7}            | 12 | b
            {"a":1,"b":1.2.3,"c":"d"} | 12 | b
            {"a":[1,{"b":2},x]}       | 17 | a
            {"a":[1,{"b":x}]}         | 14 | b
            {"a":+1,"b":+3}           | 6  | a
            {"a\\"b":H7}              | 9  | a"b
            """)
    void aFigureOrAWordThatStandsWronglyBareIsToldUnderItsKey(String text, int character, String key) {
        String words =
                assertThrows(NotJson.class, () -> WrittenObject.read(text)).getMessage();
        assertTrue(
                words.startsWith("The line is not JSON: something is wrong at character " + character + ", near "),
                words);
        assertTrue(
                words.endsWith(", under the key " + key + ": write a number as 3, 0.5 or -2.5, and a word in quotes"),
                words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            {"a":1,"b":%s}         | 1       | 2000   | b is longer than anything a sum takes
            {"a":1,"b":%s}         | 0.1     | 2000   | b is longer than anything a sum takes
            {"a":1,"b":[2,%s]}     | 1       | 2000   | b is longer than anything a sum takes
            {"a":1,"%s":2}         | k       | 60000  | A key is longer than anything a sum takes
            """)
    void whatIsTooLongIsNamedByItsOwnKey(String text, String part, int times, String words) {
        String longPart = part + part.substring(part.length() - 1).repeat(times);
        assertEquals(
                words,
                assertThrows(NotJson.class, () -> WrittenObject.read(text.formatted(longPart)))
                        .getMessage());
    }

    @Test
    void aWholeCharacterOutsideTheFirstPlaneIsRead() throws NotJson {
        assertEquals(
                plain("\uD83D\uDD29"),
                WrittenObject.read("{\"a\":\"\uD83D\uDD29\"}").get("a"));
        assertEquals(
                plain("\uD83D\uDD29"),
                WrittenObject.read("{\"a\":\"\\ud83d\\udd29\"}").get("a"));
    }

    @Test
    void eightDeepIsReadAndNineIsNot() throws NotJson {
        WrittenObject.read("{\"a\":[[[[[[[1]]]]]]]}");
        assertEquals(
                "a is nested more than 8 deep: no sum takes that",
                assertThrows(NotJson.class, () -> WrittenObject.read("{\"a\":[[[[[[[[1]]]]]]]]}"))
                        .getMessage());
    }
}
