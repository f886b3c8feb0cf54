package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person reads stands in the words; a text in quotes of four words or more is a sentence in English. */
class EnglishInJavaTest {

    private static final List<String> ROOMS =
            List.of("batch", "bench", "picture", "reference", "session", "sums", "text", "ui");

    private static final String QUOTED = "\"((?:[^\"\\\\\n]|\\\\.)*)\"";
    private static final Pattern LITERAL = Pattern.compile(QUOTED + "(?:\\s*\\+\\s*" + QUOTED + ")*");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");
    private static final Pattern WORD = Pattern.compile("(?<!\\S)[(]?[A-Za-z][a-z]+[.,:;)?!]*(?!\\S)");
    /** What only a wrong program brings about, and its makers read. */
    private static final Pattern FOR_DEVELOPERS =
            Pattern.compile("(?s)new (?:IllegalState|IllegalArgument|UncheckedIO|NoSuchElement)Exception\\([^;]*$");

    @Test
    void noSentenceIsLeftInJava() throws IOException {
        List<String> left = new ArrayList<>();
        int files = 0;
        for (String room : ROOMS) {
            try (Stream<Path> all = Files.walk(Path.of("src/main/java/org/tenthwise/app", room))) {
                for (Path file :
                        all.filter(path -> path.toString().endsWith(".java")).toList()) {
                    files++;
                    sentences(Files.readString(file))
                            .forEach(sentence -> left.add(file.getFileName() + ": " + sentence));
                }
            }
        }
        assertEquals(List.of(), left);
        assertTrue(files > 250, "only %d files were seen".formatted(files));
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
            /* as "this text in a comment" */ say("x");                    | false
            """)
    void aSentenceIsFoundInOnePieceOrSeveral(String code, boolean sentence) {
        assertEquals(sentence, sentences(code).findAny().isPresent());
    }

    private static Stream<String> sentences(String source) {
        String code = COMMENT.matcher(source).replaceAll("");
        return LITERAL.matcher(code)
                .results()
                .filter(literal -> WORD.matcher(text(literal)).results().count() >= 4)
                .filter(literal -> !FOR_DEVELOPERS
                        .matcher(code.substring(0, literal.start()))
                        .find())
                .map(EnglishInJavaTest::text);
    }

    private static String text(MatchResult literal) {
        return Pattern.compile(QUOTED)
                .matcher(literal.group())
                .results()
                .map(piece -> piece.group(1))
                .collect(Collectors.joining());
    }
}
