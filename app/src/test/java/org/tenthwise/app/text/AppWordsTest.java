package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

class AppWordsTest {

    @Test
    void anEnumValueIsNamedByItsStem() {
        assertEquals("Cut again", Words.of(Locale.ENGLISH).say("verdict", VerdictKind.CUT_AGAIN));
    }

    @Test
    void aLanguageWithoutWordsReadsEnglish() {
        assertEquals("Pass", Words.of(Locale.JAPANESE).say("verdict", VerdictKind.PASS));
    }
}
