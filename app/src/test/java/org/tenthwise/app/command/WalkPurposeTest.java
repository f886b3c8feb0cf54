package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;

/** What a walk asks by what its readings file says it is for. */
class WalkPurposeTest extends Walking {

    private static final String LOOKS = Stream.of(1, 2, 3, 4)
            .map(number ->
                    """
                    [[step]]
                    number = %1$d
                    operation = 10
                    kind = "look"
                    name = "Look %1$d"
                    what = "Right."
                    %2$s
                    """
                            .formatted(number, number == 4 ? "when = [\"first\"]" : ""))
            .collect(Collectors.joining());

    private static String plan(int issue) {
        return InventedPlans.text("mm", LOOKS).replace("issue = \"1\"", "issue = \"%d\"".formatted(issue))
                + issued(1, "")
                + (issue > 1 ? issued(2, "affected = [\"Look 1\"]") + issued(3, "affected = [\"3\"]") : "");
    }

    private static String issued(int number, String affected) {
        return """
                [[issued]]
                issue = "%1$d"
                reason = "Why %1$d"
                by = "Planner 1"
                %2$s
                """
                .formatted(number, affected);
    }

    private static String readings(String serial, String purpose, Integer... answered) {
        return """
                format = 1
                part = "T-1"
                revision = "A"
                serial = "%s"
                lot = "L-1"
                machine = "Lathe 4"
                by = "Setter 1"
                %s
                """
                        .formatted(serial, purpose)
                + Stream.of(answered)
                        .map(number -> "[[step]]\nnumber = %d\nanswers = [\"yes\"]\n".formatted(number))
                        .collect(Collectors.joining())
                + """
                [close]
                by = "Inspector 1"
                meaning = "accepted"
                """;
    }

    private Typed walked(int issue, String serial, String purpose, Integer... answered) throws IOException {
        return walk(
                file("p%d.toml".formatted(issue), plan(issue)), file("r.toml", readings(serial, purpose, answered)));
    }

    private static List<String> notHere(Typed typed) {
        return typed.out().stream()
                .filter(line -> line.contains("Not in this"))
                .map(line -> line.strip().substring(0, 1))
                .toList();
    }

    @BeforeEach
    void aWholeRunOfTheFirstIssue() throws IOException {
        assertEquals(
                0,
                walked(1, "1", "purpose = \"first article full\"\nreason = \"new part\"", 1, 2, 3, 4)
                        .exit());
    }

    private static String partial(String affected) {
        return "purpose = \"first article partial\"\nreason = \"new issue\"\nbaseline = \"T-1-A-1\"\n" + affected;
    }

    @Test
    void aPartialFirstArticleThatNamesNothingTakesWhatBothIssuesSinceAffect() throws IOException {
        Typed typed = walked(3, "2", partial(""), 1, 3);
        assertEquals(List.of("2", "4"), notHere(typed), typed.out()::toString);
        assertTrue(typed.out().stream()
                .anyMatch(line -> line.contains("First article, partial. What was asked conforms")));
    }

    @Test
    void oneThatLeavesOutWhatAnIssueBetweenAffectsIsNotBegun() throws IOException {
        Typed typed = walked(3, "2", partial("affected = [\"3\"]"), 3);
        assertEquals(2, typed.exit());
        assertEquals(
                "Issues of the plan since run T-1-A-1 affect 1 too: name these as well, or name none and all that is "
                        + "affected is taken",
                typed.trouble());
    }

    @Test
    void aPieceInProcessThatIsMeasuredAgainIsAskedWhatItWasAsked() throws IOException {
        assertEquals(List.of("4"), notHere(walked(1, "2", "purpose = \"in process\"\npiece = 2", 1, 2, 3)));
        Typed again = walked(1, "2", "purpose = \"measured again\"\nbaseline = \"T-1-A-2\"", 1, 2, 3);
        assertEquals(List.of("4"), notHere(again), again.out()::toString);
    }
}
