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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What stands between the things of a list, and between what is said one after the other, belongs to the language:
 * {@code Words} puts them together.
 */
class ListsInJavaTest {

    /** Where a person reads what is put together; what is kept for programs is the same in every language. */
    private static final List<String> READ =
            List.of("text", "ui", "story", "bench", "command", "handout", "export/pdf", "demo");

    private static final Pattern QUOTE_SIGN = Pattern.compile("'\\\\?\"'");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;.]\\s+");

    @Test
    void noListIsPutTogetherInJava() throws IOException {
        List<String> left = new ArrayList<>();
        int files = 0;
        for (String part : READ) {
            try (Stream<Path> all = Files.walk(Path.of("src/main/java/org/tenthwise/app", part))) {
                for (Path file :
                        all.filter(path -> path.toString().endsWith(".java")).toList()) {
                    files++;
                    if (joins(Files.readString(file))) {
                        left.add(file.getFileName().toString());
                    }
                }
            }
        }
        assertEquals(List.of(), left);
        assertTrue(files > 200, "only %d files were seen".formatted(files));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            String.join(", ", marks)              | true
            said.append("; ").append(next)        | true
            name.getText() + ". " + said         | true
            List.of("lower", "upper")             | false
            words.list(marks)                     | false
            word -> '"' + word + '"', ", "        | true
            getStyleClass().addAll("row", "bold") | false
            """)
    void aMarkBetweenTwoThingsIsFound(String code, boolean joins) {
        assertEquals(joins, joins(code));
    }

    private static boolean joins(String code) {
        return LITERAL.matcher(QUOTE_SIGN.matcher(code).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .map(quoted -> quoted.substring(1, quoted.length() - 1))
                .anyMatch(BETWEEN.asMatchPredicate());
    }
}
