package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapabilityTest {

    private static final Sample SAMPLE = new Sample(50, new BigDecimal("16"), new BigDecimal("2"));

    /** NIST/SEMATECH e-Handbook 6.1.6, from memory: limits 8 and 20, mean 16, s 2. */
    @Test
    void theIndexIsThatToTheNearerLimit() {
        Capability index = Capability.of(SAMPLE, limit("8"), limit("20"));
        assertEquals(1, index.cp().orElseThrow(), 1e-15);
        assertEquals(2.0 / 3, index.cpk(), 1e-15);
    }

    @Test
    void withOneLimitThereIsNoCp() {
        Capability index = Capability.of(SAMPLE, limit("8"), Optional.empty());
        assertTrue(index.cp().isEmpty());
        assertEquals(4.0 / 3, index.cpk(), 1e-15);
        assertEquals(-1, Capability.of(SAMPLE, Optional.empty(), limit("10")).cpk(), 1e-15);
    }

    @Test
    void limitsTheWrongWayRoundAreRefused() {
        assertEquals(
                "lower is 20 and upper is 8: the lower limit must be below the upper",
                assertThrows(IllegalArgumentException.class, () -> Capability.of(SAMPLE, limit("20"), limit("8")))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Capability.of(SAMPLE, limit("8"), limit("8.0")));
        assertThrows(IllegalArgumentException.class, () -> Capability.of(SAMPLE, Optional.empty(), Optional.empty()));
    }

    /**
     * D. C. Montgomery, Introduction to Statistical Quality Control: n 20, Cp 2.2857, interval 1.57 (from memory) to
     * 3.01.
     */
    @Test
    void bothEndsOfTheIntervalHaveHalfOfWhatIsNotConfidence() {
        Interval interval = CapabilityInterval.ofCp(24 / 10.5, 20, 0.95);
        assertEquals(1.57, interval.low(), 0.0051);
        assertEquals(3.01, interval.high(), 0.0051);
    }

    /** By hand: 1.959964 √(1/180 + 1/38) = 0.3497. */
    @Test
    void theIntervalOfCpkIsBissells() {
        Interval interval = CapabilityInterval.ofCpk(1, 20, 0.95);
        assertEquals(1 - 1.959964 * Math.sqrt(1 / 180.0 + 1 / 38.0), interval.low(), 1e-6);
        assertEquals(1 + 1.959964 * Math.sqrt(1 / 180.0 + 1 / 38.0), interval.high(), 1e-6);
    }

    /** Chou, Owen and Borrego (1990), worked with another program's non-central t (R 4.2.2). */
    @ParameterizedTest
    @CsvSource({"2.2857142857142856, 20, 1.654927354", "0.625, 30, 0.454081260", "0.40559089781162, 100, 0.332373468"})
    void theExactLowerBoundHasAllOfItAtOneEnd(double index, int n, double bound) {
        assertEquals(bound, CapabilityInterval.exactLowerBound(index, n, 0.95), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "1.33, 2, 5, SUPPORTS",
        "1.3299, 2, 5, TOO_FEW",
        "0.5, 1.33, 30, TOO_FEW",
        "0.5, 1.3299, 30, CONTRADICTS",
        "1.5, 2, 4, TOO_FEW",
        "-3, -1, 3, TOO_FEW"
    })
    void whatIsRequiredIsHeldAgainstBothEnds(double low, double high, int n, CapabilityVerdict verdict) {
        assertEquals(verdict, CapabilityVerdict.of(new Interval(low, high), n, new BigDecimal("1.33")));
    }

    /**
     * Ends that a double holds exactly: at the required index the low end supports, and the high end does not
     * contradict.
     */
    @ParameterizedTest
    @CsvSource({"1.25, 2, SUPPORTS", "0.5, 1.25, TOO_FEW", "1.25, 1.25, SUPPORTS"})
    void anEndExactlyAtTheRequiredIndexIsNotBelowIt(double low, double high, CapabilityVerdict verdict) {
        assertEquals(
                verdict,
                CapabilityVerdict.of(new Interval(low, high), CapabilityVerdict.FEWEST_PARTS, new BigDecimal("1.25")));
    }

    @ParameterizedTest
    @CsvSource({"20.000, -1", "20.021, 1", "20.0105, 0", "20.0210001, 1.0000095238095238095", "19.9895, -2"})
    void aReadingOnALimitUsesTheWholeTolerance(String reading, String used) {
        assertEquals(
                0,
                ToleranceUsed.of(new BigDecimal(reading), new BigDecimal("20"), new BigDecimal("20.021"))
                        .compareTo(new BigDecimal(used)));
    }

    @Test
    void theReadingFurthestOutCounts() {
        assertEquals(
                0,
                ToleranceUsed.byFurthest(
                                Decimals.of("20.010 20.012 20.003"), new BigDecimal("20"), new BigDecimal("20.020"))
                        .compareTo(new BigDecimal("0.7")));
        assertThrows(
                IllegalArgumentException.class, () -> ToleranceUsed.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE));
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "95", "-0.1", "NaN"})
    void confidenceIsAShare(double confidence) {
        assertThrows(IllegalArgumentException.class, () -> CapabilityInterval.ofCp(1, 10, confidence));
        assertThrows(IllegalArgumentException.class, () -> CapabilityInterval.ofCpk(1, 10, confidence));
        assertThrows(IllegalArgumentException.class, () -> CapabilityInterval.exactLowerBound(1, 10, confidence));
    }

    private static Optional<BigDecimal> limit(String figure) {
        return Optional.of(new BigDecimal(figure));
    }
}
