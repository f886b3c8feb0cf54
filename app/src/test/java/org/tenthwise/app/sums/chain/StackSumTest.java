package org.tenthwise.app.sums.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** The figures of the sources are run with the published cases. */
class StackSumTest {

    private final Asking sums = new Asking();

    @Test
    void aGapIsLessAndMoreByTheWorstAndByTheRoot() {
        // by hand: 0.03 + 0.04 = 0.07; √(0.0009 + 0.0016) = 0.05
        SumResult answer = sums.answer(Unit.MILLIMETRE, "stack", "tolerances=0.03 0.04; gap=0.06");
        assertEquals("0.070000", at(answer, "worst"));
        assertEquals("0.050000", at(answer, "root_sum_square"));
        assertEquals("-0.010000", at(answer, "worst_least"));
        assertEquals("0.130000", at(answer, "worst_greatest"));
        assertEquals("0.010000", at(answer, "rss_least"));
        assertEquals("0.110000", at(answer, "rss_greatest"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains("in each other's way")));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains("never reached by it")));
    }

    @Test
    void withoutAGapThereIsNone() {
        SumResult answer = sums.answer(Unit.INCH, "stack", "tolerances=0.03 0");
        assertEquals("0.03000000", at(answer, "root_sum_square"));
        assertTrue(Asking.found(answer, "worst_least").isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        tolerances=0.01 -0.02        | tolerances | tolerances has -0.02
        tolerances=0.01              | tolerances | must be a list
        tolerances=0.01 wide         | tolerances | tolerances, item 2, is "wide"
        gap=0.1                      | tolerances | tolerances is missing
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String given, String key, String words) {
        Problem problem = sums.problem(Unit.MILLIMETRE, "stack", given);
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }
}
