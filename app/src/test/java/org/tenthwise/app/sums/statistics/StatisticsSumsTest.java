package org.tenthwise.app.sums.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class StatisticsSumsTest {

    private final Sums sums = Handbook.sums();

    private SumReply ask(String sum, String given) throws NotJson {
        return sums.ask(sum, SumInput.written(WrittenObject.read("{" + given + "}")));
    }

    private SumResult answer(String sum, String given) throws NotJson {
        return assertInstanceOf(SumResult.class, ask(sum, given));
    }

    private static String at(SumResult answer, String key) {
        return Asking.at(answer, key);
    }

    private static Set<String> keys(SumResult answer) {
        return answer.written().values().keySet();
    }

    private static boolean notes(SumResult answer, String words) {
        return answer.notes().stream().anyMatch(note -> note.toString().contains(words));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            summary            | "values":[]                                            | values is an empty list
            summary            | "values":["1","x"]                                     | values, item 2, is "x": it is not a decimal number
            individuals        | "values":["1"]                                         | values: A moving range needs two readings or more, in the order the parts were made
            individuals        | "values":["1","2"],"factors":"rough"                   | factors is "rough": it is one of exact, printed
            capability         | "lower":"1","upper":"2"                                | values is missing: give the readings, or n, mean and sd
            capability         | "values":["1","2"],"n":"2","lower":"1"                 | n is given as well as values: give one or the other
            capability         | "values":["1","1.0"],"lower":"0","upper":"2"           | values: The standard deviation of 2 readings is 0: readings that are all the same show the resolution of the gauge, not the spread of the parts
            capability         | "n":"9","mean":"1","sd":"0","lower":"0","upper":"2"    | sd is 0: The standard deviation of 9 readings is 0: readings that are all the same show the resolution of the gauge, not the spread of the parts
            capability         | "n":"9","mean":"1","sd":"1"                            | There is no index without a limit: give lower, upper or both
            capability         | "n":"9","mean":"1","sd":"1","lower":"2","upper":"2.0"  | lower is 2 and upper is 2.0: the lower limit must be below the upper
            capability         | "n":"1","mean":"1","sd":"1","lower":"0"                | n is 1: it must be a whole number from 2 to 100000000
            capability         | "n":"9","mean":"1","sd":"1","lower":"0","confidence":"95" | confidence is 95: it is a share between 0 and 1, such as 0.95
            trend              | "x":["1"],"y":["1"]                                    | x: One point gives no line: two or more are needed, and a trend shows from five up
            trend              | "x":["1","1"],"y":["1","2"]                            | x: Every x is 1: a trend needs different values of x
            gauge-study        | "readings":[["1"],["2"]],"method":"range"              | readings, part 1, person 1, is not a list: readings takes lists of lists of lists, by part, by person, by repeat
            gauge-study        | "readings":[[["1","2"]]],"method":"range"              | readings: There is one part: a study needs two or more, usually ten
            gauge-study        | "readings":[[["1"]],[["2"]]],"method":"variance"       | readings: Each person must read each part at least twice: without repeats, repeatability is not known
            outlier            | "values":["1","2"],"sides":"2"                         | values: 2 readings: with fewer than three no outlier can be found
            outlier            | "values":["1","2","3"],"sides":"3"                     | sides is 3: it must be a whole number from 1 to 2
            zero-rejects       | "n":"5","rejects":"6"                                  | rejects is 6: that is more than the 5 parts of n
            tolerance-interval | "n":"5","cover":"1","confidence":"0.9","sides":"2"     | cover is 1: it is a share between 0 and 1, such as 0.95
            tolerance-interval | "cover":"0.9","confidence":"0.9","sides":"2"           | values is missing: give the readings, or n, mean and sd, or n alone for the factor
            chart-constants    | "n":"1"                                                | n is 1: it must be a whole number from 2 to 100
            type-1             | "reference":"1","tolerance":"1"                        | values is missing
            type-1             | "values":["1","2"],"reference":"1","tolerance":"0"     | tolerance is 0: it must be more than zero
            """)
    void whatCannotBeAnsweredIsRefusedInASentence(String sum, String given, String problem) throws NotJson {
        assertEquals(
                problem, assertInstanceOf(Problem.class, ask(sum, given)).why().toString());
    }

    @Test
    void oneReadingIsSummedUpWithoutASpread() throws NotJson {
        SumResult answer = answer("summary", "\"values\":[20.012]");
        assertEquals(Set.of("n", "mean", "least", "greatest", "range"), keys(answer));
        assertEquals("20.01200000", at(answer, "mean"));
        assertTrue(notes(answer, "One reading has no spread"));
    }

    @Test
    void fewReadingsHaveNoLimits() throws NotJson {
        SumResult answer = answer("individuals", "\"values\":[1,2,1,2,1,2,1,2,1]");
        assertEquals(Set.of("centre", "mean_moving_range", "standing"), keys(answer));
        assertEquals("none", at(answer, "standing"));
        assertTrue(notes(answer, "too few for limits"));
    }

    /** Four parts far outside still say nothing of the next ones. */
    @Test
    void fourPartsAreTooFewWhateverTheyAre() throws NotJson {
        SumResult answer =
                answer("capability", "\"values\":[9.1,9.2,9.3,9.4],\"lower\":1,\"upper\":2,\"required\":1.33");
        assertEquals("too-few", at(answer, "verdict"));
        assertTrue(notes(answer, "4 parts: too few to say anything about the next ones"));
        assertTrue(notes(answer, "takes 1580.0 % of the way to a limit"));
    }

    @Test
    void withoutADemandThereIsNoVerdictAndWithOneLimitNoCp() throws NotJson {
        SumResult answer = answer("capability", "\"n\":20,\"mean\":50,\"sd\":1.75,\"upper\":62");
        assertEquals(Set.of("cpk", "cpk_low", "cpk_high", "one_sided_low"), keys(answer));
        assertTrue(notes(answer, "With one limit there is no Cp"));
    }

    @Test
    void aLevelLineReachesNothing() throws NotJson {
        SumResult answer = answer("trend", "\"x\":[1,2,3],\"y\":[5,5,5],\"limit\":6");
        assertEquals("none", at(answer, "prediction"));
        assertTrue(notes(answer, "The line is level"));
        assertTrue(notes(answer, "Every y is the same"));
    }

    @Test
    void twoPointsPredictNothing() throws NotJson {
        SumResult answer = answer("trend", "\"x\":[1,2],\"y\":[5,6],\"limit\":9");
        assertEquals(Set.of("slope", "intercept", "prediction"), keys(answer));
    }

    /** Rounded down, so that the reading comes before the part that may reach the limit. */
    @Test
    void theNextReadingIsBeforeThePartThatMayReachTheLimit() throws NotJson {
        SumResult answer =
                answer("trend", "\"x\":[1,2,3,4,5,6],\"y\":[0,0.001,0.0025,0.003,0.004,0.0055],\"limit\":0.012");
        assertTrue(at(answer, "single_low").startsWith("10."));
        assertTrue(notes(answer, "Measure again at x = 10,"));
        assertTrue(notes(answer, "further ahead than the series is long"));
    }

    @Test
    void aLineThatRunsAwayFromTheLimitSaysSo() throws NotJson {
        assertTrue(notes(
                answer("trend", "\"x\":[11,12,13,14],\"y\":[1,2.1,2.9,4],\"limit\":-5"), "runs away from the limit"));
    }

    @Test
    void theReadingFurthestOutIsCountedFromOne() throws NotJson {
        SumResult answer = answer("outlier", "\"values\":[1,2,3,99,2,1,2,3],\"sides\":2");
        assertEquals("4", at(answer, "index"));
        assertEquals("true", at(answer, "outlying"));
        assertTrue(notes(answer, "index counts from 1: reading 4 is 99"));
    }

    /** A bound is never rounded to the side one would like: 22.09 % is said as 22.1 %. */
    @Test
    void noRejectInTwelveLeavesTwentyTwoInAHundred() throws NotJson {
        assertTrue(notes(
                answer("zero-rejects", "\"n\":12"),
                "with 95 % confidence the reject rate of parts made alike is at most 22.1 %"));
    }

    @Test
    void theFactorNeedsNoReadings() throws NotJson {
        assertEquals(
                Set.of("k"),
                keys(answer("tolerance-interval", "\"n\":10,\"cover\":0.95,\"confidence\":0.95,\"sides\":2")));
        assertEquals(
                Set.of("k", "low", "high"),
                keys(answer(
                        "tolerance-interval", "\"values\":[1,2,3],\"cover\":0.95,\"confidence\":0.95,\"sides\":2")));
    }

    /**
     * Howe's formula by hand for 2 parts, 95 % with 95 %: 1.959964 √(1.5 / 0.00393214) = 38.2806; the exact one is
     * 36.5192, ISO 16269-6.
     */
    @Test
    void howFarHowesApproximationIsOffIsSaidOnTwoSidesOnly() throws NotJson {
        SumResult two = answer("tolerance-interval", "\"n\":2,\"cover\":0.95,\"confidence\":0.95,\"sides\":2");
        assertEquals("36.5192", at(two, "k").substring(0, 7));
        assertTrue(notes(
                two, "k is the exact factor; Howe's approximation, which many tables print, is 38.2806, 4.82 % more"));
        assertEquals(
                "Exact, by an integral over mean and spread; ISO 16269-6:2014, Annex F",
                two.basis().toString());
        assertTrue(notes(
                answer("tolerance-interval", "\"n\":10,\"cover\":0.95,\"confidence\":0.95,\"sides\":2"),
                "is 3.3819, 0.34 % less"));
        assertFalse(
                notes(answer("tolerance-interval", "\"n\":2,\"cover\":0.95,\"confidence\":0.95,\"sides\":1"), "Howe"));
    }

    /** The twelfth root of 0.025 is 0.7353515: a least bound is rounded down. */
    @Test
    void everyPartARejectIsSaidByItsLeast() throws NotJson {
        SumResult answer = answer("zero-rejects", "\"n\":12,\"rejects\":12");
        assertEquals("0.735351", at(answer, "lower").substring(0, 8));
        assertEquals("1.00000000", at(answer, "upper"));
        assertTrue(notes(answer, "with 95 % confidence the reject rate of parts made alike is at least 73.5 %"));
        assertTrue(answer.basis().toString().endsWith("half of 1 - confidence at either end"));
    }

    @Test
    void aPerfectGaugeHasNoNumberOfDistinctParts() throws NotJson {
        SumResult answer = answer(
                "gauge-study", "\"readings\":[[[1,1],[1,1]],[[2,2],[2,2]]],\"method\":\"variance\",\"tolerance\":1");
        assertTrue(Asking.found(answer, "distinct").isEmpty());
        assertEquals("0.00000000", at(answer, "percent_of_tolerance"));
        assertTrue(notes(answer, "No repeat differs"));
    }

    @Test
    void houseRulesOfATypeOneStudyAreSaid() throws NotJson {
        SumResult answer = answer(
                "type-1",
                "\"values\":[10.000,10.001,10.002],\"reference\":10,\"tolerance\":0.06,\"share\":0.15,\"spread\":4");
        assertEquals(
                "ISO 22514-7, type-1 study; cg = 0.15 T / (4 s)", answer.basis().toString());
        assertTrue(at(answer, "cg").startsWith("2.25000000"));
    }

    /** Whatever the length of the series and however alike the readings, each sum answers or says why not. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            0
            0,0
            0,1
            1,1,1,1,1,1,1,1,1,1,1,1
            0,0,0,0,0,0,0,0,0,0,0,123456789012345678901234567890
            1e-30,2e-30,1e-30
            -5,5,-5,5,-5,5,-5,5,-5,5
            """)
    void everySeriesHasAReply(String values) throws NotJson {
        String list = "\"values\":[" + values + "]";
        List<SumReply> replies = List.of(
                ask("summary", list),
                ask("individuals", list),
                ask("capability", list + ",\"lower\":-1,\"upper\":1,\"required\":1"),
                ask("outlier", list + ",\"sides\":1"),
                ask("tolerance-interval", list + ",\"cover\":0.9,\"confidence\":0.9,\"sides\":1"),
                ask("type-1", list + ",\"reference\":0,\"tolerance\":1"),
                ask("trend", "\"x\":[" + values + "],\"y\":[" + values + "],\"limit\":3"));
        replies.forEach(reply -> {
            if (reply instanceof SumResult answer) {
                answer.values()
                        .all()
                        .forEach(result -> assertTrue(
                                result.text(Unit.MILLIMETRE)
                                        .matches("-?\\d+(\\.\\d+)?|none|trial|usual|true|false|supports|contradicts|"
                                                + "too-few"),
                                result::toString));
            } else {
                assertTrue(((Problem) reply).why().toString().contains(" "));
            }
        });
    }
}
