package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.model.words.Languages;
import org.tenthwise.model.words.Words;

class LanguageAskedTest {

    private static final Languages LANGUAGES = new Languages(
            List.of(Locale.ENGLISH, MadeUpLanguage.LOCALE),
            Locale.ENGLISH,
            language -> language.equals(Locale.ENGLISH) ? Words.ENGLISH : MadeUpLanguage.words());

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
            --language art check LG-2207, art
            check --language=art LG-2207, art
            check LG-2207,                -
            check --language,             -
            check -- --language art,      -
            """)
    void itIsFoundWhereverItStands(String typed, String asked) {
        LanguageAsked found = LanguageAsked.in(typed.split(" "));
        assertEquals(Optional.ofNullable(asked), found.named());
        assertEquals(Optional.ofNullable(asked).map(any -> MadeUpLanguage.LOCALE), found.of(LANGUAGES));
        assertEquals(Optional.empty(), found.refused(LANGUAGES));
    }

    @Test
    void whatThereAreNoWordsOfIsRefusedWithWhatThereIs() {
        assertEquals(
                "There are no words in the language \"vo\". There are: en (English), art (%s)."
                        .formatted(MadeUpLanguage.words().say("language.name")),
                Words.ENGLISH.say(
                        LanguageAsked.in("--language", "vo").refused(LANGUAGES).orElseThrow()));
    }

    @Test
    void everyCommandTakesIt() {
        for (String command : List.of("check", "demo", "verify", "reference")) {
            assertTrue(Typed.line(command, "--help").out().toString().contains("--language=LANGUAGE"), command);
        }
        assertEquals(0, Typed.line("check", "--language", "en", "LG-2207").exit());
        assertEquals(2, Typed.line("check", "LG-2207", "--language").exit());
    }
}
