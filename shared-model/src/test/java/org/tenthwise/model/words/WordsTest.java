package org.tenthwise.model.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

    private static final Map<String, String> TEXTS = Map.of(
            "size", "the shop's {0} of {1}",
            "named", "{who} took {size}",
            "list", "{0}, {1}",
            "clauses", "{0}; {1}",
            "spoken", "{0}. {1}",
            "braces", "as '{'this'}'",
            "behind", "{0}: {1, small}",
            "left", "{n, plural, =0 {none left} one {one of {all} left} other {# of {all} left}}",
            "side", "{0, select, near_jaws {at the jaws} other {far out}}");

    private final Words english = new Words(Locale.ENGLISH, TEXTS);
    private final Words polish = new Words(
            Locale.forLanguageTag("pl"),
            Map.of(
                    "left",
                    "{n, plural, one {jeden} few {# odczyty} many {# odczytów} other {# odczytu}}",
                    "size",
                    "{0}",
                    "list",
                    "{0} / {1}"));

    private enum Side {
        NEAR_JAWS,
        FAR_OUT
    }

    @Test
    void gapsAreFilledByTheirNumberAndAnApostropheStays() {
        assertEquals("the shop's bore of 35.010", english.say("size", "bore", new BigDecimal("35.010")));
    }

    @Test
    void gapsAreFilledByTheirName() {
        assertEquals(
                "J. Brandt took 35.01",
                english.say(Message.of("named").with("who", "J. Brandt").with("size", "35.01")));
    }

    @Test
    void whatIsKeyedIsCalledAsItsReaderDoes() {
        Keyed band = () -> "guard_band";
        Words bench = english.naming(key -> "«" + key + "»");
        assertEquals("the shop's guard_band of 2", english.say("size", band, 2));
        assertEquals("the shop's «guard_band» of 2", bench.say("size", band, 2));
        assertEquals("J. Brandt took «size»", bench.say(Message.of("named").with("who", "J. Brandt")));
        assertEquals("who took size", english.byKey().say("named"));
        assertThrows(IllegalArgumentException.class, () -> english.say("named"));
        assertThrows(IllegalArgumentException.class, () -> bench.say("size", band));
    }

    @Test
    void anApostropheBeforeABraceMakesItAPlainOne() {
        assertEquals("as {this}", english.say("braces"));
    }

    @ParameterizedTest
    @CsvSource({"0, none left", "1, one of 7000 left", "2, 2 of 7000 left", "5000, 5000 of 7000 left"})
    void aNumberChoosesItsTextAndItsDigitsAreNotGrouped(int left, String said) {
        assertEquals(said, english.say(Message.of("left").with("n", left).with("all", 7000)));
    }

    /** Polish has three: 1, 2 to 4 but for 12 to 14, and the rest (Unicode CLDR, Language Plural Rules, "pl"). */
    @ParameterizedTest
    @CsvSource({"1, jeden", "3, 3 odczyty", "5, 5 odczytów", "12, 12 odczytów", "22, 22 odczyty"})
    void anotherLanguageHasPluralsOfItsOwn(int left, String said) {
        assertEquals(said, polish.say(Message.of("left").with("n", left)));
    }

    @Test
    void aFigureHasAPointInEveryLanguageAndAllItsZeros() {
        assertEquals("35.010", polish.say("size", new BigDecimal("35.010")));
        assertEquals("M6.35", polish.say("size", "M6.35"));
    }

    @ParameterizedTest
    @CsvSource({"NEAR_JAWS, at the jaws", "FAR_OUT, far out"})
    void anEnumChoosesByItsName(Side side, String said) {
        assertEquals(said, english.say("side", (Object) side));
    }

    @Test
    void aMessageFillsAGapWithItsSentence() {
        assertEquals("the shop's far out of 3", english.say(Message.of("size", Message.of("side", Side.FAR_OUT), 3)));
    }

    @ParameterizedTest
    @CsvSource({"Too hot, at: too hot", "A wire, at: A wire", "ISO 286, at: ISO 286", "'', 'at: '"})
    void aSentenceBehindAColonBeginsSmall(String sentence, String said) {
        assertEquals(said, english.say("behind", "at", sentence));
    }

    @Test
    void severalThingsFillAGapAsAListOfTheLanguage() {
        assertEquals("the shop's 4, 5, 9 of 30", english.say("size", List.of(4, 5, 9), 30));
        assertEquals(
                "35.1 / 35.2 / BG-1", polish.list(List.of(new BigDecimal("35.1"), new BigDecimal("35.2"), "BG-1")));
        assertEquals("one out; two open", english.list("clauses", List.of("one out", "two open")));
        assertEquals("MC-3", polish.list(List.of("MC-3")));
        assertEquals("", english.list(List.of()));
    }

    @Test
    void whatIsToBeHeardIsSaidPartByPart() {
        assertEquals("4 Run-out. Pass", english.spoken("4 Run-out", "", "Pass", ""));
        assertEquals("", english.spoken("", ""));
    }

    @Test
    void aMissingKeyIsSaid() {
        assertThrows(MissingResourceException.class, () -> english.say("no.such.key"));
    }

    @Test
    void aGapWithNothingForItIsSaid() {
        assertEquals(
                "Nothing is given for gap 1 of size",
                assertThrows(IllegalArgumentException.class, () -> english.say("size", "bore"))
                        .getMessage());
    }

    @Test
    void aLanguageWithoutWordsReadsEnglish() {
        assertEquals(Locale.ENGLISH, Words.of(Locale.JAPANESE).locale());
    }

    @Test
    void englishOfAPlaceKeepsThePlace() {
        assertEquals("en-ZA", Words.of(Locale.forLanguageTag("en-ZA")).locale().toLanguageTag());
    }
}
