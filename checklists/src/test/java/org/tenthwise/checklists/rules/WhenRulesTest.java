package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.WhenAsked;

/** For which pieces of a lot a check is asked, as a plan says it. */
class WhenRulesTest {

    /** What else a table needs. */
    private static final Map<String, String> ASKED = Map.of(
            "elsewhere", "where = \"coordinate machine\"",
            "material", "specification = \"Shop rule 3\"",
            "process", "code = \"HT-4\"",
            "test", "what = \"40 bar\"",
            "note", "kind = \"look\"\nwhat = \"Broken.\"");

    private static PlanReading read(String when) {
        return new PlanReader()
                .read(
                        """
                        format = 1
                        part = "T-1"
                        revision = "A"
                        issue = "1"
                        name = "Invented part"
                        %sdrawing = "T-1"
                        unit = "mm"

                        [[operation]]
                        number = 10
                        name = "Turn"

                        [[step]]
                        number = 1
                        operation = 10
                        kind = "look"
                        name = "Edges"
                        what = "Broken."
                        """
                                        .formatted(
                                                when.contains("[[material]]") ? "" : "material = \"invented melt\"\n")
                                + when);
    }

    private static Optional<WhenAsked> when(String text) {
        return ((PlanReading.Good) read(text)).plan().step(1).when();
    }

    @Test
    void itIsSaidByWordsAndWhereNothingIsSaidEveryPieceIsAsked() {
        assertEquals(Optional.empty(), when(""));
        assertEquals(
                Optional.of(new WhenAsked(true, Optional.of(5), true)),
                when("when = [\"first\", \"every 5\", \"last\"]\n"));
        assertEquals(Optional.of(new WhenAsked(false, Optional.empty(), true)), when("when = [\"last\"]\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[]                       | \"when\" is empty",
                "[\"every 0\"]            | such as \"every 5\", not \"every 0\"",
                "[\"sometimes\"]          | such as \"every 5\", not \"sometimes\"",
                "[5]                      | such as \"every 5\", not the number 5",
                "[\"first\", \"first\"]   | \"when\" has \"first\" twice; give it once"
            })
    void whatIsWrongIsSaid(String when, String said) {
        List<PlanProblem> problems = ((PlanReading.Bad) read("when = " + when + "\n")).problems();
        assertEquals(1, problems.size(), problems::toString);
        String text = problems.get(0).toString();
        assertEquals(true, text.contains(said), text);
    }

    private static String table(String key, String when) {
        return """

                [[%s]]
                number = 2
                name = "Beside the work"
                %s
                when = [%s]
                """
                .formatted(key, ASKED.get(key), when);
    }

    /** The certificate of a melt is not asked again of every piece. */
    @ParameterizedTest
    @ValueSource(strings = {"elsewhere", "material", "process", "test", "note"})
    void whatPapersProveAndNotesHaveItToo(String key) {
        String first = read(table(key, "\"first\"")) instanceof PlanReading.Good good
                ? good.plan().step(2).when().toString()
                : "";
        assertEquals(Optional.of(new WhenAsked(true, Optional.empty(), false)).toString(), first);

        List<PlanProblem> problems = ((PlanReading.Bad) read(table(key, "\"seldom\""))).problems();
        assertEquals(1, problems.size(), problems::toString);
        assertEquals(true, problems.get(0).toString().contains("\"seldom\""), problems::toString);
    }
}
