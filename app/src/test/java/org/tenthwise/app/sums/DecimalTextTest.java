package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.words.Message;

class DecimalTextTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.00, 0.00",
        "+1.25, 1.25",
        ".5, 0.5",
        "3., 3",
        "007, 7",
        "1e3, 1000",
        "2.5E-4, 0.00025",
        "30.0010, 30.0010",
        "0.100000000000000005551115123126, 0.100000000000000005551115123126",
        "1e29, 100000000000000000000000000000"
    })
    void aDecimalIsReadAsItStands(String typed, String plain) {
        assertEquals(
                plain,
                DecimalText.read(Input.figure("size"), () -> Message.of("as-said", "size"), typed)
                        .toPlainString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                "+",
                "1,5",
                "1 000",
                " 1",
                "1 ",
                "0x10",
                "1e",
                "NaN",
                "Infinity",
                "1.2.3",
                "--1",
                "½",
                "٣",
                "1f",
                "1d",
                "1_000"
            })
    void anythingElseIsRefusedWithKeyAndValue(String typed) {
        CannotAnswer refused = assertThrows(
                CannotAnswer.class,
                () -> DecimalText.read(Input.figure("size"), () -> Message.of("as-said", "size"), typed));
        assertEquals("size is \"%s\": it is not a decimal number".formatted(typed), refused.getMessage());
        assertEquals("size", refused.problem().key().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e30", "-1e999", "1e-32", "0.1e-999", "1e-60", "1e1234", "1e-1000000000"})
    void whatNoShopMeasuresIsRefused(String typed) {
        assertEquals(
                "size is %s: it is outside any range a shop measures in".formatted(typed),
                assertThrows(
                                CannotAnswer.class,
                                () -> DecimalText.read(
                                        Input.figure("size"), () -> Message.of("as-said", "size"), typed))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource({"60, true", "61, false"})
    void sixtyCharactersAreEnoughForAnyFigure(int characters, boolean read) {
        String typed = "0." + "1".repeat(characters - 2);
        if (read) {
            assertEquals(
                    typed,
                    DecimalText.read(Input.figure("size"), () -> Message.of("as-said", "size"), typed)
                            .toPlainString());
        } else {
            assertEquals(
                    "size is \"%s…\": it is not a decimal number".formatted(typed.substring(0, 60)),
                    assertThrows(
                                    CannotAnswer.class,
                                    () -> DecimalText.read(
                                            Input.figure("size"), () -> Message.of("as-said", "size"), typed))
                            .getMessage());
        }
    }
}
