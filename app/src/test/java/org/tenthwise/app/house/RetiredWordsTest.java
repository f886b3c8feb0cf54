package org.tenthwise.app.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One word for one thing: what the section Words of the decisions retires stays out of every English text. */
class RetiredWordsTest {

    private static final Pattern RETIRED = Pattern.compile(
            "\\b(nought|(most|least) play|play (of|at|now|from)|doubt of|movement|anew|begun|begin a|threads to "
                    + "the inch"
                    + "|by concession|set-up step|step in process|not-go goes on|counted in|spindle locked"
                    + "|tolerance zone|of the register|understood"
                    + ")\\b",
            Pattern.CASE_INSENSITIVE);

    @Test
    void noTextHasARetiredWord() {
        assertEquals(
                List.of(),
                Bundles.english().entrySet().stream()
                        .filter(text -> RETIRED.matcher(text.getValue()).find())
                        .map(Map.Entry::toString)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"Most play 0.02", "Set the zero anew", "Run begun", "A nought too many", "movement 0.03"})
    void aRetiredWordIsFound(String text) {
        assertTrue(RETIRED.matcher(text).find());
    }
}
