package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a partial report stands on: the run that its runs were begun on, whatever is typed. */
class ReportBaselineTest extends ReportsAtHand {

    @BeforeEach
    void aWasherIsMeasuredWholeAndAgain() throws IOException {
        walked(store, "1", "");
        again(store, "2", "WA-5-A-1");
    }

    @Test
    void itIsTakenFromTheRunsWhereNothingIsTyped() throws IOException {
        Typed typed = drawnUp(store, "F-2", "--run", "WA-5-A-2");
        assertEquals(0, typed.exit(), typed::toString);
        assertTrue(form("F-2", 1).contains("\"WA-5 A, WA-5-A-1\""), form("F-2", 1));
        assertEquals(2, form("F-2", 3).lines().count(), form("F-2", 3));
    }

    @Test
    void aReportOnThatRunCanBeNamedBeside() throws IOException {
        drawnUp(store, "F-1", "--run", "WA-5-A-1");
        assertEquals(
                0,
                drawnUp(store, "F-2", "--run", "WA-5-A-2", "--baseline", "WA-5 rev. A, report F-1")
                        .exit());
        assertTrue(form("F-2", 1).contains("\"WA-5 A, WA-5-A-1, F-1\""), form("F-2", 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"WA-5 B", "WA-5 B, WA-5-A-1", "WA-5-A-2", "WA-5 A, F-7", "the last one", "WA-5"})
    void whatIsTypedBesideAndSaysSomethingElseIsRefused(String typed) {
        assertEquals(
                "The runs stand on WA-5 A, WA-5-A-1, and \"%s\" says something else: leave the baseline out, or name "
                                .formatted(typed)
                        + "that run or a report on it",
                drawnUp(store, "F-2", "--run", "WA-5-A-2", "--baseline", typed).trouble());
    }

    @Test
    void runsThatStandOnDifferentOnesAreRefused() throws IOException {
        walked(store, "3", "");
        again(store, "4", "WA-5-A-3");
        assertEquals(
                "The runs stand on different baselines: WA-5-A-1, WA-5-A-3. Each needs a report of its own",
                drawnUp(store, "F-2", "--run", "WA-5-A-2", "--run", "WA-5-A-4").trouble());
    }

    @Test
    void whatNobodySaidIsNamedWithTheOptionThatSaysIt() {
        Typed typed = report(store, "F-1", "--part", "WA-5", "--by", "Planner 1", "--run", "WA-5-A-1");
        assertTrue(
                typed.out().contains("Field 9: neither the plan nor the report names the route. Say it with --route."),
                typed::toString);
    }

    @Test
    void aRunThatWasBegunOnNothingLeavesWhatIsTyped() throws IOException {
        drawnUp(store, "F-2", "--run", "WA-5-A-1", "--extent", "partial", "--affected", "1", "--baseline", "paper 12");
        assertTrue(form("F-2", 1).contains(",paper 12"), form("F-2", 1));
    }
}
