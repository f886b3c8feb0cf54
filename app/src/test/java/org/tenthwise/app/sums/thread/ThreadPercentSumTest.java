package org.tenthwise.app.sums.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

class ThreadPercentSumTest {

    private final Asking sums = new Asking();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # by hand: 100 (D − d) / (1.299 P)
        mm | major=10; drill=8.5; pitch=1.5        | 76.9823 | fifth more
        in | major=0.375; drill=0.3125; tpi=16     | 76.9823 | fifth more
        in | major=0.375; drill=0.3320; tpi=16     | 52.9638 | fifth more
        mm | major=10; drill=10; pitch=1.5         | 0.0000  | fifth more
        mm | major=10; drill=8; pitch=1.5          | 102.6431 | breaks
        """)
    void theHoleLeavesSoMuchOfAThread(String unit, String given, String percent, String words) {
        SumResult answer = sums.answer(Unit.ofSymbol(unit).orElseThrow(), "thread-percent", given);
        assertEquals(Double.parseDouble(percent), Double.parseDouble(Asking.at(answer, "percent")), 5e-5);
        assertTrue(answer.notes().toString().contains(words), answer.notes()::toString);
        assertTrue(answer.notes().toString().contains("Measure the hole"), answer.notes()::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        major=10; drill=10.1; pitch=1.5         | drill | drill is 10.1: that is more than major, 10
        major=10; drill=0; pitch=1.5            | drill | more than zero
        major=10; drill=8.5                     | pitch | pitch is missing
        major=10; drill=8.5; pitch=1.5; tpi=16  | pitch | give one of them
        major=10; drill=8.5; pitch=0.001        | pitch | no thread is cut that fine
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String given, String key, String words) {
        Problem problem = sums.problem(Unit.MILLIMETRE, "thread-percent", given);
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }
}
