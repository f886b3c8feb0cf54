package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.words.Words;

/** Every language says all that English says, of the same values. */
class BundlesTest {

    @ParameterizedTest
    @MethodSource("languages")
    void aLanguageHasEveryKeyAndItsValues(String language) {
        Map<String, String> own = Words.textsOf(language.isEmpty() ? "" : "_" + language);
        assertEquals(List.of(), Bundles.differences(Bundles.english(), own));
    }

    @ParameterizedTest
    @MethodSource("languages")
    void theLettersOfALanguageAreFourRowsOfTen(String language) {
        String rows = Words.of(Locale.forLanguageTag(language)).say("letters.rows");
        assertEquals(
                List.of(10, 10, 10, 10),
                Arrays.stream(rows.split(" ")).map(String::length).toList(),
                rows);
    }

    static Stream<String> languages() {
        return Stream.concat(
                Stream.of(""), Arrays.stream(Locale.getISOLanguages()).filter(language -> !Words.textsOf("_" + language)
                        .isEmpty()));
    }

    @Test
    void everyTextCanBeRead() {
        Bundles.english().values().forEach(Bundles::gaps);
        assertTrue(Bundles.english().size() > 800);
    }

    @Test
    void aMissingKeyAnotherValueAndOneTooManyAreFound() {
        Map<String, String> other = new TreeMap<>(Bundles.english());
        other.remove("verdict.pass");
        other.put("outcome.out", "{0} van {1}");
        other.put("verdict.maybe", "Vielleicht");
        assertEquals(
                List.of(
                        "outcome.out takes [0, 1], not [0]",
                        "verdict.maybe is one too many",
                        "verdict.pass is missing"),
                Bundles.differences(Bundles.english(), other));
    }
}
