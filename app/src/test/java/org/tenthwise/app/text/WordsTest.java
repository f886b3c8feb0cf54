package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.verdict.VerdictKind;

class WordsTest {

    private final Words words = Words.of(Locale.ENGLISH);

    @Test
    void aGapIsFilled() {
        assertEquals("7", words.say("keypad.digit", 7));
    }

    @Test
    void anEnumValueIsNamedByItsStem() {
        assertEquals("Cut again", words.say("verdict", VerdictKind.CUT_AGAIN));
    }

    @Test
    void aMissingKeyIsSaid() {
        assertThrows(MissingResourceException.class, () -> words.say("no.such.key"));
    }

    @Test
    void aGapWithNothingForItIsSaid() {
        assertEquals(
                "Nothing is given for gap 0 of keypad.digit",
                assertThrows(IllegalArgumentException.class, () -> words.say("keypad.digit"))
                        .getMessage());
    }

    @Test
    void aLanguageWithoutWordsReadsEnglish() {
        assertEquals("Pass", Words.of(Locale.JAPANESE).say("verdict", VerdictKind.PASS));
    }
}
