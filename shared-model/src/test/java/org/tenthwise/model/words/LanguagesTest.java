package org.tenthwise.model.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LanguagesTest {

    @Test
    void englishIsThereFirst() {
        assertEquals(Locale.ENGLISH, Languages.at(Locale.ROOT).all().get(0));
    }

    /** A language nobody wrote words of. */
    @Test
    void whatHasNoWordsIsNotOffered() {
        assertEquals(Optional.empty(), Languages.at(Locale.ROOT).find("vo"));
    }

    @Test
    void aLanguageThatIsChosenDoesNotMoveThePlace() {
        assertEquals(
                Optional.of(Locale.forLanguageTag("en-AT")),
                Languages.at(Locale.forLanguageTag("de-AT")).find("en"));
    }

    @Test
    void theLanguageOfThePlaceIsTakenAsItIsThere() {
        Locale place = Locale.forLanguageTag("en-US-x-lvariant-POSIX");
        assertEquals(Optional.of(place), Languages.at(place).find("EN"));
        assertEquals(place, Languages.at(place).usual());
    }

    @Test
    void aLanguageIsCalledAsItCallsItself() {
        Languages languages = new Languages(
                List.of(Locale.ENGLISH, Locale.ITALIAN),
                Locale.ENGLISH,
                locale -> new Words(
                        locale, Map.of("language.name", locale.equals(Locale.ITALIAN) ? "Italiano" : "English")));
        assertEquals(
                List.of("English", "Italiano"),
                languages.all().stream().map(languages::name).toList());
    }
}
