package org.tenthwise.model.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the charts of the Unicode CLDR, release 47: By-Type, Date &amp; Time, Gregorian; Core Data, Exemplar
 * Characters.
 */
class LocaleCustomsTest {

    @ParameterizedTest
    @CsvSource({
        "en, d MMM y",
        "en-GB, d MMM y",
        "en-US, 'MMM d, y'",
        "de-DE, d. MMM y",
        "ja-JP, y年M月d日",
        "hu-HU, y. MMM d."
    })
    void aDateHasTheOrderOfItsPlace(String tag, String pattern) {
        assertEquals(pattern, customs(tag).datePattern("yMMMd"));
    }

    @Test
    void anHourIsOneOfTwentyFourWhereverItIsAskedForSo() {
        assertEquals("HH:mm", customs("en-US").datePattern("Hm"));
    }

    /** CLDR, Territory-Language Information, measurementData: paperSize US-Letter for these and A4 for "001". */
    @ParameterizedTest
    @CsvSource({
        "en, false",
        "en-GB, false",
        "de-DE, false",
        "en-US, true",
        "fr-CA, true",
        "es-MX, true",
        "de, false",
        "en-AU, false"
    })
    void paperIsLetterWhereCldrSaysSo(String tag, boolean letter) {
        assertEquals(letter, customs(tag).printsOnLetterPaper());
    }

    @Test
    void lettersOfTheLanguageComeBeforeThoseOfNamesFromAbroad() {
        List<String> german = customs("de").otherLetters();
        assertEquals(List.of("ß", "ä", "ö", "ü"), german.subList(0, 4));
        assertTrue(german.containsAll(List.of("é", "ñ", "ø")), german::toString);
        assertTrue(customs("en").otherLetters().containsAll(List.of("é", "ä", "ö", "ü", "ñ", "ø")));
        assertTrue(customs("ru").otherLetters().containsAll(List.of("а", "я")));
    }

    @Test
    void noOtherLetterIsPlainOrTwice() {
        for (String tag : List.of("en", "de", "fr", "pl", "cs", "tr", "hu")) {
            List<String> letters = customs(tag).otherLetters();
            assertEquals(letters.stream().distinct().toList(), letters);
            assertTrue(letters.stream().noneMatch(letter -> letter.matches("[a-z]") || letter.length() != 1), tag);
        }
    }

    private static LocaleCustoms customs(String tag) {
        return new LocaleCustoms(Locale.forLanguageTag(tag));
    }
}
