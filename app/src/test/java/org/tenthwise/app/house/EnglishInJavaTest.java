package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person reads stands in the words; a text in quotes of three words or more is a sentence in English. */
class EnglishInJavaTest {

    private static final List<String> MODULES = List.of("shared-model", "checklists", "app");

    private static final String QUOTED = "\"((?:[^\"\\\\\n]|\\\\.)*)\"";
    private static final Pattern LITERAL = Pattern.compile(QUOTED + "(?:\\s*\\+\\s*" + QUOTED + ")*");
    private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?m://[^\"\n]*$)");
    private static final Pattern WORD = Pattern.compile("(?<!\\S)[(]?[A-Za-z][a-z]+[.,:;)?!]*(?!\\S)");
    /** What its makers read: an exception whose reason is for a person has a key. */
    private static final Pattern FOR_DEVELOPERS = Pattern.compile("(?s)new (?:\\w+Exception|NotKept)\\([^;]*$");

    private static final Pattern SQL = Pattern.compile("\\b(?:SELECT|WHERE|LIKE|drawn_\\w+)\\b");

    /** What stands so in files and hashes, is told by a library or the system, or is for a log. */
    private static final Set<String> SAID_BY_NOBODY = Set.of(
            "made and measured",
            "Tenthwise ledger, first page",
            "Tenthwise run, first page",
            "Invalid unicode escape",
            "no space left",
            "not enough space",
            "Run %s was made by a newer release");

    @Test
    void noSentenceIsLeftInJava() throws IOException {
        List<String> left = new ArrayList<>();
        int files = 0;
        for (String module : MODULES) {
            try (Stream<Path> all = Files.walk(Path.of("..", module, "src/main/java"))) {
                for (Path file :
                        all.filter(path -> path.toString().endsWith(".java")).toList()) {
                    files++;
                    sentences(Files.readString(file))
                            .filter(sentence -> !SAID_BY_NOBODY.contains(sentence))
                            .forEach(sentence -> left.add(file.getFileName() + ": " + sentence));
                }
            }
        }
        assertEquals(List.of(), left);
        assertTrue(files > 600, "only %d files were seen".formatted(files));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            say("The part" + " is too" + " hot");                          | true
            say("%s is %s: it lies past the limits".formatted(aim, size)); | true
            say("next-cut.past-size", "no size", "two words");             | false
            throw new IllegalStateException("Two sums go by one name");    | false
            throw new Refused("Two sums go by one name");                  | true
            /* as "this text in a comment" */ say("x");                    | false
            """)
    void aSentenceIsFoundInOnePieceOrSeveral(String code, boolean sentence) {
        assertEquals(sentence, sentences(code).findAny().isPresent());
    }

    @Test
    void aSentenceIsFoundBehindAComment() {
        assertEquals(
                List.of("The part is too hot"),
                sentences("x(); // so\nsay(\"The part is too hot\");").toList());
    }

    private static Stream<String> sentences(String source) {
        String code = COMMENT.matcher(source).replaceAll("");
        return LITERAL.matcher(code)
                .results()
                .filter(literal -> WORD.matcher(text(literal)).results().count() >= 3)
                .filter(literal -> !FOR_DEVELOPERS
                        .matcher(code.substring(0, literal.start()))
                        .find())
                .map(EnglishInJavaTest::text)
                .filter(text -> !SQL.matcher(text).find());
    }

    private static String text(MatchResult literal) {
        return Pattern.compile(QUOTED)
                .matcher(literal.group())
                .results()
                .map(piece -> piece.group(1))
                .collect(Collectors.joining());
    }
}
