package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.words.Words;

/** The list of German terms against the German texts and against what it says it was taken from. */
class GermanTermsTest {

    private static final Path PAGE = Path.of("german.md");
    private static final List<String> MARKS = List.of("in use", "from memory", "title", "foreword", "catalogue");

    /** What a shop of today does not say any more, does not say to its people, or could take for an order to cut. */
    private static final List<String> NOT_SAID = List.of(
            "Schieblehre", "bitte", "daß", "muß", "Meß", "Toleranzzone", "Neu drehen", "neu drehen", "nochmals drehen");

    private record Term(String english, List<String> german, String source) {}

    private final String texts = String.join("\n", Words.textsOf("_de").values());

    @Test
    void everyTermOfTheListIsSaid() {
        String said = texts.toLowerCase(Locale.GERMAN);
        assertEquals(
                List.of(),
                terms().stream()
                        .flatMap(term -> term.german().stream())
                        .filter(term -> !said.contains(term.toLowerCase(Locale.GERMAN)))
                        .toList());
    }

    @Test
    void everyTermHasAMarkOfWhereItComesFrom() {
        assertEquals(
                List.of(),
                terms().stream()
                        .filter(term -> MARKS.stream().noneMatch(term.source()::contains))
                        .toList());
    }

    @Test
    void everyStandardATermIsOfIsNamedWithWhatItIs() {
        Set<String> named = table("standard")
                .flatMap(row -> Arrays.stream(row.get(0).split(", ")))
                .collect(Collectors.toSet());
        assertEquals(
                List.of(),
                terms().stream()
                        .map(Term::source)
                        .filter(source -> !source.startsWith("in use"))
                        .map(source -> source.split("[:,]")[0])
                        .filter(standard -> !named.contains(standard))
                        .toList());
    }

    @Test
    void aThingHasOneTerm() {
        List<String> english = terms().stream().map(Term::english).toList();
        assertEquals(List.copyOf(Set.copyOf(english)).size(), english.size());
        assertTrue(english.size() > 100, english::toString);
    }

    @Test
    void whatIsNotSaidInAShopIsNotSaidHere() {
        assertEquals(
                List.of(),
                NOT_SAID.stream().filter(word -> texts.contains(word)).toList());
    }

    /** *Sie* within a sentence is a person spoken to, and *Speicher* for the store was another word for one thing. */
    @Test
    void nobodyIsSpokenToAndTheStoreHasOneName() {
        assertEquals(
                List.of(),
                texts.lines()
                        .filter(line -> line.matches(".*[\\p{Ll},] (Sie|Ihnen|Ihre?[mnrs]?)\\b.*")
                                || line.matches(".*(?<!privaten )\\bSpeichers?\\b.*"))
                        .toList());
    }

    private static List<Term> terms() {
        return table("English")
                .map(row -> new Term(row.get(0), List.of(row.get(1).split("; ")), row.get(2)))
                .toList();
    }

    /** The rows of the tables whose first column is headed so. */
    private static Stream<List<String>> table(String heading) {
        try {
            return Arrays.stream(Files.readString(PAGE).split("\n\n"))
                    .filter(block -> block.startsWith("| " + heading + " |"))
                    .flatMap(block -> block.lines().skip(2))
                    .map(row -> List.of(row.replaceAll("^\\| | \\|$", "").split(" \\| ")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
