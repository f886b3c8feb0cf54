package org.tenthwise.app.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A source of published figures says who, when and where: an author or publisher by name, a year or an edition, and a
 * page, table, clause, example or page of the web. Nobody can look up "a maker's table".
 */
class SourcesTest {

    private static final Pattern NOBODY =
            Pattern.compile("(?i)^(an?|the|some|one)\\s|\\b(maker|supplier|manufacturer)s?'?s?\\b|"
                    + "\\bpublic (document|chart)|\\bpublished "
                    + "(table|chart|example|worked|notes?|guide|text|article)|\\bon the "
                    + "web\\b|\\btextbook\\b|not named");
    private static final Pattern WHEN = Pattern.compile("\\b(1[89]|20)\\d\\d\\b|\\b\\d+(st|nd|rd|th) ed\\.");
    private static final Pattern WHERE = Pattern.compile(
            "\\bpp?\\. \\d|\\b[Tt]ables? (\\d|[A-Z]\\.\\d|of )|\\bFig(\\.|ure) \\d|\\b[Ee]xample |\\bProblem \\d|"
                    + ", (\\d+|[A-Z])(\\.\\d+)+|\\bCorrigendum \\d|\\bdocument \\d|\\bpage \\S|\\.(com|jp|in|org)\\b");

    /** What is missing, or nothing. */
    private static String missing(String source) {
        if (NOBODY.matcher(source).find() || !Character.isLetter(source.charAt(0))) {
            return "who";
        }
        return WHEN.matcher(source).find() ? WHERE.matcher(source).find() ? "" : "where" : "when";
    }

    @Test
    void whatIsPublishedCanBeLookedUp() {
        List<String> vague = Stream.of(Topic.values())
                .flatMap(topic -> PublishedCases.of(topic).stream())
                .filter(one -> one.standing() == SourceKind.PUBLISHED)
                .map(PublishedCase::source)
                .distinct()
                .filter(source -> !missing(source).isEmpty())
                .map(source -> missing(source) + ": " + source)
                .toList();
        assertEquals("", String.join("\n", vague));
    }

    @Test
    void whatIsLeftOutNamesSomebodyToo() {
        assertEquals(
                List.of(),
                PublishedCases.leftOut().stream()
                        .map(LeftOut::source)
                        .filter(source -> NOBODY.matcher(source).find())
                        .distinct()
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a firm",
                "the usual handbook",
                "Nowhere, from its maker",
                "Nowhere, public chart",
                "Nowhere, published notes",
                "31 tables"
            })
    void aSourceThatNamesNobodyIsRefused(String nobody) {
        assertEquals("who", missing(nobody + ", 2009, p. 4"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"p. 2130", "Table 15.2"})
    void aSourceWithoutAYearOrAnEditionIsRefused(String where) {
        assertEquals("when", missing("Nowhere, " + where));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2019", "31st ed."})
    void aSourceWithoutAPlaceInItIsRefused(String when) {
        assertEquals("where", missing("Nowhere, " + when));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Machinery's Handbook, 31st ed., p. 2130",
                "JCGM 100:2008, H.1",
                "Yamawa, General Catalogue 2021, pp. 646 and 657"
            })
    void aSourceSaysWhoWhenAndWhere(String source) {
        assertEquals("", missing(source));
    }
}
