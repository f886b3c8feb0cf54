package org.tenthwise.model.firstarticle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Refused;

class FirstArticleTest {

    private static FirstArticle report(ReportAsked asked, Joined... runs) {
        return FirstArticle.of(asked, Stream.of(runs).map(Joined::sheet).toList(), Optional.empty());
    }

    private static FirstArticle full(Joined... runs) {
        return report(Joined.full(), runs);
    }

    /** Each line as its number, then for each result its column, its instances and its readings as typed. */
    private static List<String> lines(FirstArticle article) {
        return article.characteristics().stream()
                .map(one -> one.number().orElseThrow()
                        + one.results().stream()
                                .map(result -> " | %d %s %s"
                                        .formatted(
                                                result.column(),
                                                result.instances(),
                                                result.checked().orElseThrow().measured().stream()
                                                        .map(FirstArticleTest::typed)
                                                        .toList()))
                                .collect(Collectors.joining()))
                .toList();
    }

    private static String typed(Measured measured) {
        return measured.reading().typed().text();
    }

    private static Map<Lack.Why, List<String>> open(FirstArticle article) {
        return article.open().stream().collect(Collectors.toMap(Lack::why, Lack::what));
    }

    private static String refusal(ReportAsked asked, Joined... runs) {
        return assertThrows(Refused.class, () -> report(asked, runs)).why().key();
    }

    @Test
    void aRunInWhichAllIsRightIsCompleteALineACharacteristic() {
        FirstArticle article = full(Joined.right("1"));
        assertEquals(
                List.of("1 | 0 [] [20.010]", "2 | 0 [1, 2, 3, 4] [8.010, 8.00, 8.015, 8.02]", "3 | 0 [] []"),
                lines(article));
        assertEquals(List.of(), article.open());
        assertTrue(article.isComplete());
        assertFalse(article.hasNonconformance());
        assertEquals(
                List.of("Bar"),
                article.products().stream()
                        .map(product -> product.line().step().name())
                        .toList());
    }

    @Test
    void oneOfFourThatIsOutStandsOnALineOfItsOwnWithItsValue() {
        FirstArticle article = full(new Joined("1")
                .bore("20.010")
                .holes("8.010", "8.00", "8.035", "8.02")
                .papers()
                .closed());
        assertEquals(
                List.of("2 | 0 [1, 2, 4] [8.010, 8.00, 8.02]", "2 | 0 [3] [8.035]"),
                lines(article).subList(1, 3));
        assertTrue(article.hasNonconformance());
        assertEquals(Map.of(Lack.Why.NOT_DECIDED, List.of("2")), open(article));
    }

    @Test
    void whereEachIsAskedForEachHasALineInTheirOrder() {
        FirstArticle article = full(new Joined("1")
                .eachHole()
                .bore("20.010")
                .holes("8.010", "8.035", "8.015", "8.02")
                .papers()
                .closed());
        assertEquals(
                List.of("2 | 0 [1] [8.010]", "2 | 0 [2] [8.035]", "2 | 0 [3] [8.015]", "2 | 0 [4] [8.02]"),
                lines(article).subList(1, 5));
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
        assertEquals("1 (r-1)", full(Joined.right("1"), Joined.right("1")).column(1));
    }

    @Test
    void aConcessionIsDocumentedWithItsNumberAndTheReportStaysIncomplete() {
        FirstArticle article = full(new Joined("1")
                .bore("20.03")
                .holes("8.01", "8.01", "8.01", "8.01")
                .papers()
                .did(new StepEvent.DispositionSigned(
                        1, Disposition.USE_AS_IS, "fits", "Design office", Optional.of("NC-12")))
                .closed());
        assertEquals(List.of("NC-12"), article.characteristics().get(0).nonconformances());
        assertTrue(article.hasNonconformance());
        assertEquals(Map.of(Lack.Why.NONCONFORMANCE, List.of("1")), open(article));
    }

    @Test
    void aDispositionWithoutANumberIsSaid() {
        FirstArticle article = full(new Joined("1")
                .bore("20.03")
                .holes("8.01", "8.01", "8.01", "8.01")
                .papers()
                .did(new StepEvent.DispositionSigned(1, Disposition.SCRAP, "too big", "Design office"))
                .closed());
        assertEquals(List.of("1"), open(article).get(Lack.Why.NO_NUMBER));
    }

    /** The disposition was signed for the reading before. */
    @Test
    void aDispositionThatLapsedDecidesNothing() {
        FirstArticle article = full(new Joined("1")
                .bore("20.03")
                .did(new StepEvent.DispositionSigned(
                        1, Disposition.USE_AS_IS, "fits", "Design office", Optional.of("NC-12")))
                .bore("20.06")
                .holes("8.01", "8.01", "8.01", "8.01")
                .papers()
                .closed());
        assertEquals(List.of(), article.characteristics().get(0).nonconformances());
        assertEquals(List.of("1"), open(article).get(Lack.Why.NOT_DECIDED));
    }

    @Test
    void whatIsRepairedAndInDoesNotConformAllTheSame() {
        FirstArticle article = full(new Joined("1")
                .bore("20.03")
                .did(new StepEvent.DispositionSigned(
                        1, Disposition.REPAIR, "sleeved", "Design office", Optional.of("A-7")))
                .bore("20.01")
                .holes("8.01", "8.01", "8.01", "8.01")
                .papers()
                .closed());
        assertEquals("1 | 0 [] [20.01]", lines(article).get(0));
        assertTrue(article.hasNonconformance());
        assertEquals(List.of("A-7"), article.characteristics().get(0).nonconformances());
    }

    @Test
    void aReadingThatWasStruckOutIsNowhere() {
        Joined run = new Joined("1").bore("20.010");
        FirstArticle article = full(run.did(new Event.StruckOut(2, "chip under the anvil"))
                .holes("8.01", "8.01", "8.01", "8.01")
                .papers()
                .closed());
        assertEquals("1 | 0 [] []", lines(article).get(0));
        assertEquals(Map.of(Lack.Why.CHARACTERISTIC_OPEN, List.of("1")), open(article));
    }

    @Test
    void whatIsNotClosedNotAnsweredOrSignedAgainstIsSaid() {
        FirstArticle article = full(
                new Joined("1").bore("20.010").holes("8.01", "8.01", "8.01", "8.01"),
                Joined.right("2").did(new Event.Signed("Inspector 1", SignedAs.NOT_ACCEPTED)));
        assertEquals(
                Map.of(
                        Lack.Why.RUN_OPEN, List.of("r-1"),
                        Lack.Why.SIGNED_AGAINST, List.of("r-2"),
                        Lack.Why.CHARACTERISTIC_OPEN, List.of("3"),
                        Lack.Why.PRODUCT_OPEN, List.of("Bar")),
                open(article));
    }

    @Test
    void aPaperAgainstTheMaterialIsANonconformance() {
        FirstArticle article = full(new Joined("1")
                .bore("20.010")
                .holes("8.01", "8.01", "8.01", "8.01")
                .paper(3, "CMM-7", Document.Says.CONFORMS)
                .paper(4, "HEAT-9", Document.Says.DOES_NOT_CONFORM)
                .closed());
        assertTrue(article.hasNonconformance());
        assertEquals(Map.of(Lack.Why.PRODUCT_OUT, List.of("Bar")), open(article));
    }

    @Test
    void balloonsMissingInTheRowAreSaid() {
        assertEquals(
                Map.of(Lack.Why.BALLOONS_MISSING, List.of("3\u20134")),
                open(full(Joined.right("1").thirdBalloon("5"))));
    }

    @Test
    void aPartialReportHasTheAffectedAlone() {
        FirstArticle article = report(Joined.partial("1"), Joined.right("1"));
        assertEquals(List.of("1 | 0 [] [20.010]"), lines(article));
        assertEquals(List.of(), article.products());
        assertTrue(article.isComplete());
    }

    private static Joined boreAgain(String serial) {
        return new Joined(serial, Occasion.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1)))
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
    void whatAnotherRunOfTheSameSerialFoundIsNotMissedInOneThatLeavesItOut() {
        FirstArticle article = full(Joined.right("1"), boreAgain("1"));
        assertEquals("1 | 0 [] [20.010] | 1 [] [20.015]", lines(article).get(0));
        assertTrue(article.isComplete(), article.open()::toString);
        assertFalse(full(Joined.right("1"), boreAgain("2")).isComplete());
    }

    /** Serials begin again with each lot, and many parts have none. */
    @Test
    void whatAPartOfAnotherLotOrWithoutASerialFoundIsMissed() {
        Occasion again = Occasion.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1));
        Joined ofLotB = new Joined("1", "B", again).bore("20.015").closed().asRun("r-other");
        assertFalse(full(Joined.right("1"), ofLotB).isComplete());
        Joined noSerial = new Joined("", again).bore("20.015").closed().asRun("r-other");
        assertFalse(full(Joined.right(""), noSerial).isComplete());
    }

    @Test
    void whatARunWasBegunForIsMissedInAPartialReport() {
        Occasion both = Occasion.partialFirstArticle(new Baseline("r-0", "ab"), "new program", List.of(1, 2));
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

    /** The runs here begin on 2026-11-25. */
    @Test
    void twoYearsToTheDayAreALapse() {
        assertEquals(
                List.of(new ReportNote(ReportNote.Of.LAPSE, List.of("2024-11-25", "2026-11-25"))),
                FirstArticle.of(
                                Joined.full(),
                                List.of(Joined.right("1").sheet()),
                                Optional.of(LocalDate.parse("2024-11-25")))
                        .notes());
        assertEquals(
                List.of(),
                FirstArticle.of(
                                Joined.full(),
                                List.of(Joined.right("1").sheet()),
                                Optional.of(LocalDate.parse("2024-11-26")))
                        .notes());
    }

    @Test
    void changesInForceAndTheRouteComeFromThePlanAndFromWhoAsks() {
        FirstArticle article = full(Joined.right("1"));
        assertEquals(List.of("ECN 3"), article.changes());
        assertEquals("R-1", article.route());
    }
}
