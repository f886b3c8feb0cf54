package org.tenthwise.model.firstarticle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.firstarticle.Reported.full;
import static org.tenthwise.model.firstarticle.Reported.lines;
import static org.tenthwise.model.firstarticle.Reported.open;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** What a report says of the characteristics, materials and tests of its runs. */
class FirstArticleTest {

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
    void changesInForceAndTheRouteComeFromThePlanAndFromWhoAsks() {
        FirstArticle article = full(Joined.right("1"));
        assertEquals(List.of("ECN 3"), article.changes());
        assertEquals("R-1", article.route());
    }
}
