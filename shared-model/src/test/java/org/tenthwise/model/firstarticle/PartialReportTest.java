package org.tenthwise.model.firstarticle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.firstarticle.Reported.full;
import static org.tenthwise.model.firstarticle.Reported.lines;
import static org.tenthwise.model.firstarticle.Reported.open;
import static org.tenthwise.model.firstarticle.Reported.refusal;
import static org.tenthwise.model.firstarticle.Reported.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Occasions;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Refused;

/** What a partial report is on, and what it misses. */
class PartialReportTest {

    @Test
    void aPartialReportHasTheAffectedAlone() {
        FirstArticle article = report(Joined.partial("1"), Joined.right("1"));
        assertEquals(List.of("1 | 0 [] [20.010]"), lines(article));
        assertEquals(List.of(), article.products());
        assertTrue(article.isComplete());
    }

    private static Joined boreAgain(String serial) {
        return new Joined(serial, Occasions.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1)))
                .bore("20.015")
                .closed();
    }

    @Test
    void whatARunLeavesOutIsOpenInAFullReportAndNotInAPartialOne() {
        assertEquals(
                Map.of(
                        Lack.Why.CHARACTERISTIC_OPEN, List.of("2", "3"),
                        Lack.Why.PRODUCT_OPEN, List.of("Bar")),
                open(full(boreAgain("1"))));
        assertTrue(report(Joined.partial("1"), boreAgain("1")).isComplete());
    }

    @Test
    void whatARunWasBegunForIsMissedInAPartialReport() {
        Occasion both = Occasions.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1, 2));
        Joined run = new Joined("1", both)
                .bore("20.015")
                .holes("8.01", "8.01", "8.01", "8.01")
                .closed();
        assertEquals(Map.of(Lack.Why.AFFECTED_LEFT_OUT, List.of("2")), open(report(Joined.partial("1"), run)));
        assertTrue(report(Joined.partial("1", "Holes"), run).isComplete());
    }

    @Test
    void aPartThatIsOutElsewhereMakesNoPartialReportComplete() {
        Joined run = new Joined("1")
                .bore("20.010")
                .holes("8.01", "8.01", "8.035", "8.01")
                .papers();
        assertEquals(
                Map.of(Lack.Why.RUN_OPEN, List.of("r-1"), Lack.Why.NOT_DECIDED, List.of("2")),
                open(report(Joined.partial("1"), run)));
        run.did(new StepEvent.DispositionSigned(2, Disposition.SCRAP, "too big", "Design office", Optional.of("NC-12")))
                .closed();
        FirstArticle scrapped = report(Joined.partial("1"), run);
        assertEquals(Map.of(Lack.Why.NONCONFORMANCE, List.of("2")), open(scrapped));
        assertTrue(scrapped.hasNonconformance());
    }

    @Test
    void whatTheIssueSaysIsAffectedIsMissedInAPartialReport() {
        assertEquals(
                Map.of(Lack.Why.AFFECTED_LEFT_OUT, List.of("1")),
                open(report(Joined.partial("2", "Bar"), Joined.right("1"))));
    }

    @Test
    void aPartialReportNamesItsBaselineAndSomethingOfThePlan() {
        assertEquals("model.report.not-in-the-plan", refusal(Joined.partial("77"), Joined.right("1")));
        assertEquals(
                "model.report.partial",
                assertThrows(Refused.class, Joined::partial).why().key());
    }

    private static IssueOfPlan issue(String number, Optional<List<String>> affected) {
        return new IssueOfPlan(number, "why", "Planner 1", Optional.empty(), Optional.empty(), affected);
    }

    /** By issue 2 the holes, by issue 3 the bore. */
    private static Joined ofTheThird() {
        return Joined.right("1")
                .issues(
                        issue("1", Optional.empty()),
                        issue("2", Optional.of(List.of("2"))),
                        issue("3", Optional.of(List.of("1"))));
    }

    private static Plan of(String issue) {
        return Joined.right("0").issue(issue).sheet().plan();
    }

    @Test
    void whatAnyIssueSinceTheBaselineAffectsIsMissedNotThatOfTheNewestAlone() {
        FirstArticle sinceTheFirst = report(Joined.partial("1"), of("1"), ofTheThird());
        assertEquals(Map.of(Lack.Why.AFFECTED_LEFT_OUT, List.of("2")), open(sinceTheFirst));
        assertTrue(report(Joined.partial("1"), of("2"), ofTheThird()).isComplete());
        assertTrue(report(Joined.partial("2"), of("3"), ofTheThird()).isComplete());
    }

    @Test
    void whereNobodyKnowsTheBaselineEveryIssueCounts() {
        assertEquals(Map.of(Lack.Why.AFFECTED_LEFT_OUT, List.of("2")), open(report(Joined.partial("1"), ofTheThird())));
        assertTrue(report(Joined.partial("1", "2"), ofTheThird()).isComplete());
    }

    @Test
    void anIssueOfWhichNobodySaidWhatItAffectsIsNamed() {
        Joined run = Joined.right("1")
                .issues(
                        issue("1", Optional.empty()),
                        issue("2", Optional.empty()),
                        issue("3", Optional.of(List.of("1"))));
        List<ReportNote> named = List.of(new ReportNote(ReportNote.Of.NOT_SAID, List.of("2")));
        assertEquals(named, report(Joined.partial("1"), of("1"), run).notes());
        assertEquals(named, report(Joined.partial("1"), run).notes());
        assertEquals(List.of(), report(Joined.partial("1"), of("2"), run).notes());
        assertEquals(List.of(), full(run).notes());
    }
}
