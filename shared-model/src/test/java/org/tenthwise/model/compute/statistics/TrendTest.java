package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrendTest {

    /** By hand: Sxx 2, Sxy 2, Syy 8/3; left over 2/3; s of the slope √(1/3), of the intercept √(2/3 · (1/3 + 4/2)). */
    @Test
    void threePointsGiveALineAndWhatIsLeftOver() {
        Trend trend = Trend.of(Decimals.of("1 2 3"), Decimals.of("1 3 3"));
        assertEquals(1, trend.slope().doubleValue());
        assertEquals(1 / 3.0, trend.intercept().doubleValue(), 1e-15);
        Trend.Scatter scatter = trend.scatter().orElseThrow();
        assertEquals(Math.sqrt(2 / 3.0), scatter.residualSd().doubleValue(), 1e-15);
        assertEquals(Math.sqrt(1 / 3.0), scatter.slopeSd().doubleValue(), 1e-15);
        assertEquals(Math.sqrt(14 / 9.0), scatter.interceptSd().doubleValue(), 1e-15);
        assertEquals(0.75, scatter.determination().orElseThrow().doubleValue());
        Interval slope = trend.slopeInterval(0.5).orElseThrow();
        assertEquals(1 - Math.sqrt(1 / 3.0), slope.low(), 1e-12);
        assertEquals(1 + Math.sqrt(1 / 3.0), slope.high(), 1e-12);
    }

    @Test
    void twoPointsHaveALineAndNoScatter() {
        Trend trend = Trend.of(Decimals.of("1 3"), Decimals.of("20.001 20.005"));
        assertEquals(0, trend.slope().compareTo(new BigDecimal("0.002")));
        assertEquals(Optional.empty(), trend.scatter());
        assertEquals(Optional.empty(), trend.slopeInterval(0.95));
        assertEquals(
                Optional.empty(), LimitReached.of(trend, BigDecimal.TEN, 0.95).prediction());
        assertThrows(IllegalArgumentException.class, () -> DriftPower.of(trend, Decimals.of("1 3"), 3, 0.95));
    }

    @Test
    void aTrendNeedsTwoPlaces() {
        assertEquals(
                "x has 2 values and y has 1: each y needs its x",
                assertThrows(IllegalArgumentException.class, () -> Trend.of(Decimals.of("1 2"), Decimals.of("1")))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Trend.of(Decimals.of("1"), Decimals.of("1")));
        assertThrows(IllegalArgumentException.class, () -> Trend.of(List.of(), List.of()));
        assertEquals(
                "Every x is 4: a trend needs different values of x",
                assertThrows(IllegalArgumentException.class, () -> Trend.of(Decimals.of("4 4.0"), Decimals.of("1 2")))
                        .getMessage());
    }

    @Test
    void pointsOnALineMeetTheLimitWithoutDoubt() {
        Trend trend = Trend.of(Decimals.of("1 2 3"), Decimals.of("0.001 0.002 0.003"));
        LimitReached reached = LimitReached.of(trend, new BigDecimal("0.010"), 0.95);
        assertEquals(0, reached.g().orElseThrow());
        LimitReached.Prediction prediction = reached.prediction().orElseThrow();
        assertEquals(
                List.of(10.0, 10.0, 10.0, 10.0, 10.0),
                List.of(
                        prediction.at().doubleValue(),
                        prediction.low().doubleValue(),
                        prediction.high().doubleValue(),
                        prediction.singleLow().doubleValue(),
                        prediction.singleHigh().doubleValue()));
    }

    /**
     * Fieller's interval of the line is where the limit meets the band of the line: b x + a ± t s √(1/n + (x −
     * mean)²/Sxx).
     */
    @Test
    void atTheEndsOfTheIntervalTheBandMeetsTheLimit() {
        Trend trend = Trend.of(Decimals.of("1 2 3 4 5 6 7 8"), Decimals.of("0.9 2.2 2.8 4.1 5.3 5.7 7.2 7.9"));
        LimitReached.Prediction prediction =
                LimitReached.of(trend, new BigDecimal("12"), 0.95).prediction().orElseThrow();
        assertEquals(12, band(trend, prediction.low().doubleValue(), 0, 1), 1e-9);
        assertEquals(12, band(trend, prediction.high().doubleValue(), 0, -1), 1e-9);
        assertEquals(12, band(trend, prediction.singleLow().doubleValue(), 1, 1), 1e-9);
        for (BigDecimal end : List.of(prediction.singleLow(), prediction.singleHigh())) {
            BigDecimal line = trend.intercept().add(trend.slope().multiply(end));
            double off = Math.abs(12 - line.doubleValue());
            assertEquals(off, trend.singleReach(end, 0.95), 1e-9);
        }
        assertEquals(12, band(trend, prediction.singleHigh().doubleValue(), 1, -1), 1e-9);
        assertFalse(LimitReached.of(trend, new BigDecimal("12"), 0.95).uncertain());
    }

    @Test
    void aSlopeThatCannotBeToldFromNonePredictsNothing() {
        Trend trend = Trend.of(Decimals.of("1 2 3 4"), Decimals.of("1 3 2 2.5"));
        LimitReached reached = LimitReached.of(trend, BigDecimal.TEN, 0.95);
        assertTrue(reached.g().orElseThrow() >= 1);
        assertEquals(Optional.empty(), reached.prediction());
        assertFalse(reached.uncertain());
        Trend level = Trend.of(Decimals.of("1 2 3 4"), Decimals.of("7 7 7 7"));
        assertEquals(
                Optional.empty(), LimitReached.of(level, BigDecimal.TEN, 0.95).prediction());
        assertEquals(Optional.empty(), level.scatter().orElseThrow().determination());
    }

    @Test
    void aSlopeThatIsBarelyShownIsUncertain() {
        Trend trend = Trend.of(Decimals.of("1 2 3 4 5"), Decimals.of("1 2.6 2.4 4.4 4.6"));
        LimitReached reached = LimitReached.of(trend, BigDecimal.TEN, 0.95);
        assertTrue(reached.uncertain(), () -> "g " + reached.g());
        assertTrue(reached.prediction().isPresent());
    }

    /**
     * Power of the t test of a slope at 5 %, drift of 3 s over the run; worked with another program (R 4.2.2) to two
     * places.
     */
    @ParameterizedTest
    @CsvSource({"5, 0.38", "8, 0.64", "10, 0.76", "15, 0.91", "20, 0.97"})
    void aDriftOfThreeIsFoundMoreOftenInMoreParts(int n, double power) {
        List<BigDecimal> parts =
                IntStream.rangeClosed(1, n).mapToObj(BigDecimal::valueOf).toList();
        assertEquals(power, DriftPower.of(Trend.of(parts, parts), parts, 3, 0.95), 0.005);
    }

    private static double band(Trend trend, double x, double single, int side) {
        double t = trend.t(0.95);
        double out = x - trend.meanX().doubleValue();
        double s = trend.scatter().orElseThrow().residualSd().doubleValue();
        return trend.intercept().doubleValue()
                + trend.slope().doubleValue() * x
                + side
                        * t
                        * s
                        * Math.sqrt(single
                                + 1.0 / trend.n()
                                + out * out / trend.sxx().doubleValue());
    }
}
