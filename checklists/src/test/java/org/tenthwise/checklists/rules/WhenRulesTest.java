package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.WhenAsked;

/** For which pieces of a lot a check is asked, as a plan says it. */
class WhenRulesTest {

    private static PlanReading read(String when) {
        return new PlanReader()
                .read(
                        """
                        format = 1
                        part = "T-1"
                        revision = "A"
                        issue = "1"
                        name = "Invented part"
                        material = "invented melt"
                        drawing = "T-1"
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
}
