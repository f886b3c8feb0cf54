package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.PluralRules;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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
    void theLettersOfALanguageAreFourRowsOfTenOrEleven(String language) {
        List<String> rows = List.of(
                Words.of(Locale.forLanguageTag(language)).say("letters.rows").split(" "));
        int across = rows.get(0).length();
        assertEquals(4, rows.size(), rows::toString);
        assertTrue(across == 10 || across == 11, rows::toString);
        assertTrue(rows.stream().allMatch(row -> row.length() == across), rows::toString);
    }

    /** What a serial, a lot, a name or a note is written with. */
    @ParameterizedTest
    @MethodSource("languages")
    void theLettersOfALanguageHaveEveryPlainSignOnce(String language) {
        String rows = Words.of(Locale.forLanguageTag(language)).say("letters.rows");
        for (char sign : "0123456789abcdefghijklmnopqrstuvwxyz-/.,".toCharArray()) {
            assertEquals(1, rows.chars().filter(one -> one == sign).count(), String.valueOf(sign));
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void whateverIsCountedHasTheFormsOfTheLanguage(String language) {
        Set<String> forms =
                PluralRules.forLocale(Locale.forLanguageTag(language)).getKeywords();
        Map<String, List<String>> missing = new TreeMap<>();
        Words.textsOf(language.isEmpty() ? "" : "_" + language).forEach((key, text) -> {
            List<String> of = Bundles.formsMissing(text, language.isEmpty() ? Set.of("other") : forms);
            if (!of.isEmpty()) {
                missing.put(key, of);
            }
        });
        assertEquals(Map.of(), missing);
    }

    @Test
    void germanIsThere() {
        assertTrue(languages().toList().contains("de"));
    }

    @Test
    void aFormThatIsMissingIsFound() {
        assertEquals(
                List.of("n one"), Bundles.formsMissing("{n, plural, =0 {none} other {#}}", Set.of("one", "other")));
        assertEquals(List.of(), Bundles.formsMissing("{n, plural, =1 {one} other {#}}", Set.of("one", "other")));
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
        other.put("head.behind", "{n} dahinter");
        other.put("wrong.why.sense", "Andersherum");
        assertEquals(
                List.of(
                        "head.behind counts [], not [n]",
                        "outcome.out takes [0, 1], not [0]",
                        "verdict.maybe is one too many",
                        "verdict.pass is missing",
                        "wrong.why.sense has 1 parts, not 2"),
                Bundles.differences(Bundles.english(), other));
    }
}
