package org.tenthwise.model.firstarticle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.firstarticle.Reported.full;
import static org.tenthwise.model.firstarticle.Reported.lines;
import static org.tenthwise.model.firstarticle.Reported.refusal;
import static org.tenthwise.model.firstarticle.Reported.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Occasions;

/** Which runs stand in one report, and what they find together. */
class JoinedRunsTest {

    private static Joined boreAgain(String serial) {
        return new Joined(serial, Occasions.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1)))
                .bore("20.015")
                .closed();
    }

    @Test
    void severalSerialsStandBesideEachOtherAndWhatIsOutAlone() {
        FirstArticle article = full(
                Joined.right("1"),
                new Joined("2")
                        .bore("20.03")
                        .holes("8.01", "8.01", "8.01", "8.01")
                        .papers()
                        .closed());
        assertEquals(
                List.of(
                        "1 | 0 [] [20.010]",
                        "1 | 1 [] [20.03]",
                        "2 | 0 [1, 2, 3, 4] [8.010, 8.00, 8.015, 8.02] | 1 [1, 2, 3, 4] [8.01, 8.01, 8.01, 8.01]",
                        "3 | 0 [] [] | 1 [] []"),
                lines(article));
        assertEquals(List.of("1", "2"), article.serials());
        assertEquals("2", article.column(1));
    }

    @Test
    void whatAnotherRunOfTheSameSerialFoundIsNotMissedInOneThatLeavesItOut() {
        FirstArticle article = full(Joined.right("1"), boreAgain("1"));
        assertEquals("1 | 0 [] [20.010] | 1 [] [20.015]", lines(article).get(0));
        assertTrue(article.isComplete(), article.open()::toString);
        assertFalse(full(Joined.right("1"), boreAgain("2")).isComplete());
    }

    /** Serials begin again with each lot, and many parts have none. */
    @Test
    void whatAPartOfAnotherLotOrWithoutASerialFoundIsMissed() {
        Occasion again = Occasions.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1));
        Joined ofLotB = new Joined("1", "B", again).bore("20.015").closed().asRun("r-other");
        assertFalse(full(Joined.right("1"), ofLotB).isComplete());
        Joined noSerial = new Joined("", again).bore("20.015").closed().asRun("r-other");
        assertFalse(full(Joined.right(""), noSerial).isComplete());
    }

    @Test
    void runsThatAskOtherwiseOrOfAnotherPartDoNotStandTogether() {
        assertEquals(
                "model.report.asks-otherwise",
                refusal(
                        Joined.full(),
                        Joined.right("1"),
                        Joined.right("2").issue("2").boreUpTo("20.03")));
        assertEquals(
                "model.report.put-away",
                refusal(Joined.full(), new Joined("1").did(new Event.PutAway("Setter 1", "begun twice"))));
        assertEquals(
                "model.report.not-known",
                refusal(Joined.full(), Joined.right("1").did(new Event.Unknown("later", "{}"))));
    }

    @Test
    void issuesThatAskTheSameStandTogetherAndThatIsSaid() {
        assertEquals(
                List.of(new ReportNote(ReportNote.Of.SEVERAL_ISSUES, List.of("1", "2"))),
                full(Joined.right("1"), Joined.right("2").issue("2")).notes());
    }

    private static List<ReportNote> lastMade(String day) {
        PartBefore before = new PartBefore(Optional.of(LocalDate.parse(day)), Optional.empty());
        return report(Joined.full(), before, Joined.right("1")).notes();
    }

    /** The runs here begin on 2026-11-25. */
    @Test
    void twoYearsToTheDayAreALapse() {
        assertEquals(
                List.of(new ReportNote(ReportNote.Of.LAPSE, List.of("2024-11-25", "2026-11-25"))),
                lastMade("2024-11-25"));
        assertEquals(List.of(), lastMade("2024-11-26"));
    }

    @Test
    void runsOfTwoStationsThatAreCalledAlikeAreToldApartByTheirPlace() {
        assertEquals("1 (r-1, 2)", full(Joined.right("1"), Joined.right("1")).column(1));
        assertEquals(
                "1 (r-2)",
                full(Joined.right("1"), Joined.right("1").asRun("r-2")).column(1));
    }
}
