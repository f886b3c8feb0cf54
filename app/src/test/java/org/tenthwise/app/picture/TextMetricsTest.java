package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.words.Words;

class TextMetricsTest {

    private final TextMetrics lettering = new TextMetrics(Words.ENGLISH);

    @ParameterizedTest
    @EnumSource(
            value = Face.class,
            names = {"REGULAR", "MEDIUM", "BOLD"})
    void figuresHaveOneWidth(Face face) {
        double zero = lettering.width("0", face, 20);
        "123456789"
                .chars()
                .forEach(figure -> assertEquals(zero, lettering.width(String.valueOf((char) figure), face, 20), 1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u00d8", "\u00b0", "\u2212", "\u00b1", "\u00d7", "\u00b5"})
    void theSignsOfTheTradeAreInTheFamily(String sign) {
        assertEquals(
                List.of(Face.REGULAR),
                lettering.runs(sign, Face.REGULAR, 20).stream()
                        .map(TextMetrics.TextRun::face)
                        .toList());
    }

    @Test
    void aSignTheFamilyLacksComesFromTheOther() {
        assertEquals(
                List.of(Face.BOLD, Face.OTHER_SCRIPTS_BOLD, Face.BOLD),
                lettering.runs("a \u0531 b", Face.BOLD, 20).stream()
                        .map(TextMetrics.TextRun::face)
                        .toList());
    }

    @Test
    void theDiameterSignIsARunOfItsOwn() {
        assertEquals(
                List.of("\u2300", "30"),
                lettering.runs("\u230030", Face.REGULAR, 20).stream()
                        .map(TextMetrics.TextRun::text)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("org.tenthwise.app.picture.DrawingSigns#all")
    void noSignOfADrawingIsABox(String sign) {
        String lettered = lettering.runs("4X" + sign + "15", Face.REGULAR, 20).stream()
                .map(TextMetrics.TextRun::text)
                .collect(Collectors.joining());
        assertFalse(lettered.contains("\ufffd"), lettered);
        assertTrue(lettered.length() > 4, lettered);
    }

    @Test
    void twiceTheSizeIsTwiceAsWide() {
        assertEquals(2 * lettering.width("30.021", Face.BOLD, 12), lettering.width("30.021", Face.BOLD, 24), 1e-9);
        assertTrue(lettering.width("30.021", Face.BOLD, 12) > 12);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # written, lettered; a tab, a line end, a control sign, a sign no face has, one beyond the first 65,536
        'a\tb',          'a b'
        'a\r\nb',       'a  b'
        'a\u0007b',      'a\ufffdb'
        '\u4e2d',        '\ufffd'
        '\ud83d\udf59', '\ufffd'
        """)
    void whatCannotBeLetteredIsASpaceOrABox(String written, String lettered) {
        assertEquals(
                lettered,
                lettering.runs(written, Face.REGULAR, 20).stream()
                        .map(TextMetrics.TextRun::text)
                        .collect(Collectors.joining()));
    }
}
