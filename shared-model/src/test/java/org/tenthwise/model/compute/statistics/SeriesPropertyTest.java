package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What holds for every series of readings. */
class SeriesPropertyTest {

    private static final double FINE = 1e-9;

    @Provide
    Arbitrary<List<BigDecimal>> readings() {
        return Arbitraries.bigDecimals()
                .between(new BigDecimal("-500"), new BigDecimal("500"))
                .ofScale(4)
                .list()
                .ofMinSize(3)
                .ofMaxSize(30);
    }

    /** Few, equal, coarse and one far beyond any gauge. */
    @Provide
    Arbitrary<List<BigDecimal>> awkward() {
        return Arbitraries.of(
                        BigDecimal.ZERO,
                        new BigDecimal("0.001"),
                        new BigDecimal("-0.001"),
                        new BigDecimal("20.000"),
                        new BigDecimal("1e-30"),
                        new BigDecimal("123456789012345678901234567890"))
                .list()
                .ofMinSize(0)
                .ofMaxSize(12);
    }

    @Property(tries = 200)
    void aShiftMovesTheMeanAndNothingElse(
            @ForAll("readings") List<BigDecimal> readings,
            @ForAll @BigRange(min = "-1000000", max = "1000000") @Scale(3) BigDecimal shift) {
        sameSpread(readings, each(readings, shift::add));
        assertEquals(
                Summary.of(readings).mean().add(shift).doubleValue(),
                Summary.of(each(readings, shift::add)).mean().doubleValue(),
                1e-9);
    }

    @Property(tries = 200)
    void aChangeOfSignMovesTheMeanAndNothingElse(@ForAll("readings") List<BigDecimal> readings) {
        sameSpread(readings, each(readings, BigDecimal::negate));
        assertSame(
                Summary.of(readings).mean().negate(),
                Summary.of(each(readings, BigDecimal::negate)).mean());
    }

    @Property(tries = 200)
    void aScaleScales(
            @ForAll("readings") List<BigDecimal> readings,
            @ForAll @BigRange(min = "0.001", max = "1000") @Scale(3) BigDecimal factor) {
        List<BigDecimal> scaled = each(readings, factor::multiply);
        double by = factor.doubleValue();
        assertClose(by * sd(readings), sd(scaled));
        assertClose(by * meanMovingRange(readings), meanMovingRange(scaled));
        assertEquals(
                Summary.of(readings).autocorrelation().isPresent(),
                Summary.of(scaled).autocorrelation().isPresent());
        if (sd(readings) > 0) {
            assertClose(g(readings), g(scaled));
        }
    }

    @Property(tries = 200)
    void orderDoesNotMatterToTheSpread(@ForAll("readings") List<BigDecimal> readings, @ForAll Random random) {
        List<BigDecimal> shuffled = new ArrayList<>(readings);
        Collections.shuffle(shuffled, random);
        assertSame(Summary.of(readings).mean(), Summary.of(shuffled).mean());
        assertSame(
                Summary.of(readings).sd().orElseThrow(),
                Summary.of(shuffled).sd().orElseThrow());
        if (sd(readings) > 0) {
            assertClose(g(readings), g(shuffled));
        }
    }

    @Property(tries = 200)
    void theGreatestPossibleOutlierIsNeverExceeded(@ForAll("readings") List<BigDecimal> readings) {
        Assume.that(sd(readings) > 0);
        int n = readings.size();
        assertTrue(g(readings) <= (n - 1) / Math.sqrt(n) * (1 + FINE));
        assertTrue(Grubbs.critical(n, 2, 0.05) < (n - 1) / Math.sqrt(n));
        assertTrue(Grubbs.critical(n, 1, 0.05) < Grubbs.critical(n, 2, 0.05));
    }

    @Property(tries = 200)
    void capabilityDoesNotHangOnTheUnitOrTheZero(
            @ForAll("readings") List<BigDecimal> readings,
            @ForAll @BigRange(min = "-1000", max = "1000") @Scale(3) BigDecimal shift) {
        Assume.that(sd(readings) > 0);
        BigDecimal inch = new BigDecimal("25.4");
        UnaryOperator<BigDecimal> other = reading -> reading.add(shift).multiply(inch);
        BigDecimal lower = new BigDecimal("-400");
        BigDecimal upper = new BigDecimal("500");
        Capability here = Capability.of(Sample.of(readings), Optional.of(lower), Optional.of(upper));
        Capability there = Capability.of(
                Sample.of(each(readings, other)), Optional.of(other.apply(lower)), Optional.of(other.apply(upper)));
        assertClose(here.cp().orElseThrow(), there.cp().orElseThrow());
        assertClose(here.cpk(), there.cpk());
        assertTrue(here.cpk() <= here.cp().orElseThrow() * (1 + FINE));
    }

    @Property(tries = 200)
    void aTrendMovesAlongWithItsZeros(
            @ForAll("readings") List<BigDecimal> y,
            @ForAll Random places,
            @ForAll @BigRange(min = "-1000", max = "1000") @Scale(2) BigDecimal shiftX,
            @ForAll @BigRange(min = "-1000", max = "1000") @Scale(4) BigDecimal shiftY) {
        List<BigDecimal> x = y.stream()
                .map(reading -> BigDecimal.valueOf(places.nextInt(10_001), 2))
                .toList();
        Assume.that(x.stream().distinct().count() > 1);
        Trend here = Trend.of(x, y);
        Trend there = Trend.of(each(x, shiftX::add), each(y, shiftY::add));
        assertSame(here.slope(), there.slope());
        assertEquals(here.slopeInterval(0.95), there.slopeInterval(0.95));
        assertSame(
                here.scatter().orElseThrow().residualSd(),
                there.scatter().orElseThrow().residualSd());
        LimitReached reached = LimitReached.of(here, BigDecimal.TEN, 0.95);
        LimitReached moved = LimitReached.of(there, BigDecimal.TEN.add(shiftY), 0.95);
        assertEquals(reached.g(), moved.g());
        assertEquals(reached.prediction().isPresent(), moved.prediction().isPresent());
        reached.prediction().ifPresent(prediction -> {
            LimitReached.Prediction other = moved.prediction().orElseThrow();
            assertClose(prediction.at().add(shiftX).doubleValue(), other.at().doubleValue());
            assertClose(prediction.low().add(shiftX).doubleValue(), other.low().doubleValue());
            assertClose(
                    prediction.high().add(shiftX).doubleValue(), other.high().doubleValue());
            assertClose(
                    prediction.singleLow().add(shiftX).doubleValue(),
                    other.singleLow().doubleValue());
            assertTrue(prediction.singleLow().compareTo(prediction.low()) <= 0);
            assertTrue(prediction.high().compareTo(prediction.singleHigh()) <= 0);
        });
    }

    @Property(tries = 200)
    void moreConfidenceIsWider(
            @ForAll @IntRange(min = 2, max = 200) int n,
            @ForAll @BigRange(min = "-3", max = "5") @Scale(2) BigDecimal index) {
        double cpk = index.doubleValue();
        assertTrue(CapabilityInterval.exactLowerBound(cpk, n, 0.99) < CapabilityInterval.exactLowerBound(cpk, n, 0.9));
        Interval usual = CapabilityInterval.ofCpk(cpk, n, 0.95);
        Interval sure = CapabilityInterval.ofCpk(cpk, n, 0.99);
        assertTrue(sure.low() < usual.low() && usual.low() < cpk && cpk < usual.high() && usual.high() < sure.high());
        assertTrue(ToleranceFactor.oneSide(n, 0.9, 0.9) < ToleranceFactor.oneSide(n, 0.9, 0.95));
        assertTrue(ToleranceFactor.oneSide(n, 0.9, 0.9) < ToleranceFactor.oneSide(n, 0.95, 0.9));
    }

    @Property(tries = 200)
    void whateverIsReadGivesASentenceOrAFiniteFigure(@ForAll("awkward") List<BigDecimal> readings) {
        DoubleConsumer finite =
                figure -> assertTrue(Double.isFinite(figure), () -> "%s of %s".formatted(figure, readings));
        orSentence(() -> Summary.of(readings).sd().ifPresent(sd -> finite.accept(sd.doubleValue())));
        orSentence(() -> finite.accept(meanMovingRange(readings)));
        orSentence(() -> finite.accept(g(readings)));
        orSentence(() -> finite.accept(CapabilityInterval.exactLowerBound(
                Capability.of(Sample.of(readings), Optional.of(BigDecimal.ZERO), Optional.of(BigDecimal.ONE))
                        .cpk(),
                readings.size(),
                0.95)));
        orSentence(() -> finite.accept(TypeOneStudy.of(Sample.of(readings), BigDecimal.ONE, BigDecimal.ONE, 0.2, 6)
                .cgk()));
        List<BigDecimal> places = IntStream.range(0, readings.size())
                .mapToObj(BigDecimal::valueOf)
                .toList();
        orSentence(() -> finite.accept(Trend.of(places, readings)
                .slopeInterval(0.95)
                .map(Interval::high)
                .orElse(0.0)));
        orSentence(() -> LimitReached.of(Trend.of(places, readings), BigDecimal.ONE, 0.95)
                .prediction()
                .ifPresent(prediction -> Stream.of(
                                prediction.at(),
                                prediction.low(),
                                prediction.high(),
                                prediction.singleLow(),
                                prediction.singleHigh())
                        .forEach(place -> finite.accept(place.doubleValue()))));
    }

    private static void orSentence(Runnable sum) {
        try {
            sum.run();
        } catch (IllegalArgumentException e) {
            assertTrue(e.getMessage().contains(" "), e::getMessage);
        }
    }

    private static void sameSpread(List<BigDecimal> readings, List<BigDecimal> others) {
        assertSame(
                Summary.of(readings).sd().orElseThrow(), Summary.of(others).sd().orElseThrow());
        assertEquals(
                Summary.of(readings).autocorrelation().map(BigDecimal::stripTrailingZeros),
                Summary.of(others).autocorrelation().map(BigDecimal::stripTrailingZeros));
        assertEquals(meanMovingRange(readings), meanMovingRange(others));
        if (sd(readings) > 0) {
            assertClose(g(readings), g(others));
            assertClose(Math.abs(tAgainstFirst(readings)), Math.abs(tAgainstFirst(others)));
        }
    }

    private static double tAgainstFirst(List<BigDecimal> readings) {
        return TypeOneStudy.of(Sample.of(readings), readings.get(0), BigDecimal.ONE, 0.2, 6)
                .tOfBias();
    }

    private static double sd(List<BigDecimal> readings) {
        return Summary.of(readings).sd().orElseThrow().doubleValue();
    }

    private static double g(List<BigDecimal> readings) {
        return Grubbs.of(readings, 2, 0.05).g();
    }

    private static double meanMovingRange(List<BigDecimal> readings) {
        return Individuals.of(readings, Individuals.Factors.PRINTED)
                .meanMovingRange()
                .doubleValue();
    }

    private static List<BigDecimal> each(List<BigDecimal> readings, UnaryOperator<BigDecimal> change) {
        return readings.stream().map(change).toList();
    }

    private static void assertSame(BigDecimal expected, BigDecimal found) {
        assertEquals(0, expected.compareTo(found), () -> "%s and %s".formatted(expected, found));
    }

    private static void assertClose(double expected, double found) {
        assertEquals(expected, found, FINE * (1 + Math.abs(expected)));
    }
}
