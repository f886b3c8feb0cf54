package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.IssueOfPlan;

class IssueRulesTest {

    private static final String ISSUED =
            """

            [[issued]]
            issue = "0"
            reason = "First issue"
            by = "Planner 1"

            [[issued]]
            issue = "1"
            reason = "Depth read at two places"
            by = "Setter 1"
            approved_by = "Planner 1"
            on = "2026-11-30"
            """;

    @Test
    void anIssueSaysWhatAPartialCheckTakesIn() {
        assertEquals(
                Optional.of(List.of("12", "14A")),
                PlanText.plan(PlanText.DEPTH + ISSUED + "affected = [\"12\", \"14A\"]\n")
                        .issues()
                        .get(1)
                        .affected());
        assertEquals(
                Optional.of(List.of()),
                PlanText.plan(PlanText.DEPTH + ISSUED + "affected = []\n")
                        .issues()
                        .get(1)
                        .affected());
    }

    @Test
    void theIssuesOfAPlanSayWhyAndWho() {
        assertEquals(
                List.of(
                        new IssueOfPlan(
                                "0", "First issue", "Planner 1", Optional.empty(), Optional.empty(), Optional.empty()),
                        new IssueOfPlan(
                                "1",
                                "Depth read at two places",
                                "Setter 1",
                                Optional.of("Planner 1"),
                                Optional.of(LocalDate.of(2026, 11, 30)),
                                Optional.empty())),
                PlanText.plan(PlanText.DEPTH + ISSUED).issues());
        assertEquals(List.of(), PlanText.plan(PlanText.DEPTH).issues());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "issue = \"1\"\\nreason|issue = \"2\"\\nreason|\"issue\" is 1, but the last of [[issued]] is issue 2",
                "approved_by = \"Planner 1\"|approved_by = \"setter 1\"|"
                        + "issued: \"approved_by\" is another person than \"by\", not setter 1 again",
                "2026-11-30|30.11.2026|issued: \"on\" is a day as in \"2026-11-30\", not \"30.11.2026\"",
                "by = \"Setter 1\"|who = \"Setter 1\"|issued: \"by\" is missing"
            })
    void whatDoesNotFitIsNamed(String right, String wrong, String said) {
        PlanReading reading = new PlanReader()
                .read(PlanText.HEAD
                        + PlanText.DEPTH
                        + ISSUED.replace(right.replace("\\n", "\n"), wrong.replace("\\n", "\n")));
        assertEquals(
                said,
                assertInstanceOf(PlanReading.Bad.class, reading)
                        .problems()
                        .get(0)
                        .what()
                        .toString());
    }
}
