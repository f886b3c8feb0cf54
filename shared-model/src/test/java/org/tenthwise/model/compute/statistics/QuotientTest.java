package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A quotient found in short sums is the one found in long ones, to the last figure and place. */
class QuotientTest {

    private static final int TIMES = 20_000;
    private static final int MOST_PLACES = 8;

    @Test
    void aQuotientThatComesOutSoonIsTheSameAsTheLongOne() {
        Random any = new Random(7);
        for (int i = 0; i < TIMES; i++) {
            BigDecimal above = BigDecimal.valueOf(any.nextInt(200_001) - 100_000, any.nextInt(MOST_PLACES));
            BigDecimal below = BigDecimal.valueOf(1 + any.nextInt(5_000), any.nextInt(MOST_PLACES));
            assertEquals(
                    above.divide(below, Precision.WORKING).round(Precision.RESULT),
                    Precision.quotient(above, below),
                    () -> above + " / " + below);
        }
        assertEquals(
                BigDecimal.ZERO
                        .divide(new BigDecimal("0.025"), Precision.WORKING)
                        .round(Precision.RESULT),
                Precision.quotient(BigDecimal.ZERO, new BigDecimal("0.025")));
    }
}
