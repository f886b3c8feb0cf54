package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SummaryTest {

    /**
     * NIST StRD NumAcc3, and NumAcc4 from memory: 1001 readings; mean, s = 0.1 and lag-1 autocorrelation −0.999
     * certified as exact.
     */
    @ParameterizedTest
    @CsvSource({"1000000.2, 1000000.1, 1000000.3", "10000000.2, 10000000.1, 10000000.3"})
    void aMeanTenMillionTimesTheSpreadCostsNoFigure(BigDecimal first, BigDecimal low, BigDecimal high) {
        List<BigDecimal> readings = Stream.concat(
                        Stream.of(first), IntStream.range(0, 500).boxed().flatMap(i -> Stream.of(low, high)))
                .toList();
        Summary summary = Summary.of(readings);
        assertEquals(0, summary.mean().compareTo(first));
        assertEquals(0, summary.sd().orElseThrow().compareTo(new BigDecimal("0.1")));
        assertEquals(0, summary.autocorrelation().orElseThrow().compareTo(new BigDecimal("-0.999")));
    }

    @Test
    void oneReadingHasNoSpread() {
        Summary summary = Summary.of(Decimals.of("20.012"));
        assertEquals(new BigDecimal("20.012"), summary.mean());
        assertEquals(Optional.empty(), summary.sd());
        assertEquals(Optional.empty(), summary.autocorrelation());
        assertEquals(0, summary.range().signum());
    }

    /** By hand: s of two readings is their difference over √2. */
    @Test
    void twoReadingsHaveASpread() {
        Summary summary = Summary.of(Decimals.of("20 22"));
        assertEquals(Math.sqrt(2), summary.sd().orElseThrow().doubleValue(), 1e-15);
        assertEquals(-0.5, summary.autocorrelation().orElseThrow().doubleValue());
    }

    @Test
    void readingsAllAlikeHaveNoAutocorrelation() {
        Summary summary = Summary.of(Decimals.of("0.1 0.10 0.100"));
        assertEquals(0, summary.sd().orElseThrow().signum());
        assertEquals(Optional.empty(), summary.autocorrelation());
        assertEquals(1, summary.different());
    }

    @Test
    void fourDifferentValuesInFiveReadingsAreCoarse() {
        assertTrue(Summary.of(Decimals.of("1 2 3 4 4")).coarse());
        assertFalse(Summary.of(Decimals.of("1 2 3 4 5")).coarse());
        assertFalse(Summary.of(Decimals.of("1 2 3 3")).coarse());
    }

    @Test
    void nothingCannotBeSummedUp() {
        assertEquals(
                "There are no readings to summarise",
                assertThrows(IllegalArgumentException.class, () -> Summary.of(List.of()))
                        .getMessage());
    }

    @Test
    void aSampleNeedsTwoReadingsThatDiffer() {
        assertEquals(
                "n is 1: a standard deviation needs two readings or more",
                assertThrows(IllegalArgumentException.class, () -> Sample.of(Decimals.of("1")))
                        .getMessage());
        assertEquals(
                "The standard deviation of 3 readings is 0: readings that are all the same show the resolution of "
                        + "the gauge, "
                        + "not the spread of the parts",
                assertThrows(IllegalArgumentException.class, () -> Sample.of(Decimals.of("2 2.0 2")))
                        .getMessage());
    }
}
