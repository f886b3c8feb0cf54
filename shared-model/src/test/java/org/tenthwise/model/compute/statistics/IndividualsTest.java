package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.statistics.Individuals.Factors;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;

class IndividualsTest {

    /** Common practice: no limits below ten, trial limits to 24. */
    @ParameterizedTest
    @CsvSource({"2, NONE", "9, NONE", "10, TRIAL", "24, TRIAL", "25, USUAL", "300, USUAL"})
    void limitsStandByHowManyReadingsThereAre(int n, LimitsStanding standing) {
        Individuals chart = Individuals.of(seeSaw(n), Factors.PRINTED);
        assertEquals(standing, chart.standing());
        assertEquals(standing == LimitsStanding.NONE, chart.limits().isEmpty());
    }

    /**
     * By hand: moving ranges of 1 all along; 3 / 1.128 = 2.6595745 about 0.5, and 3.267; in full 3 √π / 2 = 2.6586808.
     */
    @Test
    void limitsStandAboutTheMean() {
        Individuals.ChartLimits printed =
                Individuals.of(seeSaw(10), Factors.PRINTED).limits().orElseThrow();
        assertEquals(3.1595745, printed.upper().doubleValue(), 5e-8);
        assertEquals(-2.1595745, printed.lower().doubleValue(), 5e-8);
        assertEquals(3.267, printed.movingRangeUpper().doubleValue());
        Individuals.ChartLimits exact =
                Individuals.of(seeSaw(10), Factors.EXACT).limits().orElseThrow();
        assertEquals(0.5 + 1.5 * Math.sqrt(Math.PI), exact.upper().doubleValue(), 1e-12);
        assertEquals(
                1 + 3 * Math.sqrt(Math.PI / 2 - 1), exact.movingRangeUpper().doubleValue(), 1e-11);
    }

    @Test
    void readingsAllAlikeHaveLimitsAtTheCentre() {
        Individuals.ChartLimits limits = Individuals.of(Decimals.of("5 5 5 5 5 5 5 5 5 5"), Factors.PRINTED)
                .limits()
                .orElseThrow();
        assertEquals(0, limits.upper().compareTo(limits.lower()));
    }

    @Test
    void oneReadingHasNoMovingRange() {
        assertEquals(
                "A moving range needs two readings or more, in the order the parts were made",
                assertThrows(IllegalArgumentException.class, () -> Individuals.of(Decimals.of("5"), Factors.PRINTED))
                        .getMessage());
    }

    @Test
    void aDriftShowsAgainstTheMovingRanges() {
        List<BigDecimal> drifting =
                IntStream.range(0, 12).mapToObj(BigDecimal::valueOf).toList();
        assertTrue(Steadiness.unsteady(drifting));
        assertFalse(Steadiness.unsteady(drifting.subList(0, 9)));
        assertFalse(Steadiness.unsteady(seeSaw(12)));
    }

    private static List<BigDecimal> seeSaw(int n) {
        return IntStream.range(0, n).mapToObj(i -> BigDecimal.valueOf(i % 2)).toList();
    }
}
