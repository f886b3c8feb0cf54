package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outliers, the bias of a gauge on one master, and rejects. */
class OneReadingOutTest {

    /** NIST/SEMATECH e-Handbook 1.3.5.17.1: eight readings of a uranium isotope. */
    @Test
    void theReadingFurthestOutIsNamedFromOne() {
        Grubbs test = Grubbs.of(Decimals.of("199.31 199.53 200.19 200.82 201.92 201.95 202.18 245.57"), 1, 0.05);
        assertEquals(2.4687, test.g(), 0.0001);
        assertEquals(2.032, test.critical(), 0.0005);
        assertEquals(8, test.place());
        assertTrue(test.outlying());
    }

    /** Two ends in question ask more than one: 2.127 against 2.032 at eight readings. */
    @Test
    void bothEndsAskMoreThanOne() {
        assertEquals(2.1266, Grubbs.critical(8, 2, 0.05), 0.00006);
        assertEquals(2.0317, Grubbs.critical(8, 1, 0.05), 0.00006);
    }

    /** G cannot be above (n − 1)/√n: 1.1547 for three, however far out one lies. */
    @Test
    void ofThreeReadingsOneIsHardlyEverOut() {
        Grubbs test = Grubbs.of(Decimals.of("10 10 1000000"), 2, 0.05);
        assertEquals(2 / Math.sqrt(3), test.g(), 1e-15);
        assertTrue(test.outlying());
        assertFalse(Grubbs.of(Decimals.of("10 11 30"), 2, 0.05).outlying());
    }

    @Test
    void fewerThanThreeAndAllAlikeAreRefused() {
        assertEquals(
                "2 readings: with fewer than three no outlier can be found",
                assertThrows(IllegalArgumentException.class, () -> Grubbs.of(Decimals.of("1 2"), 2, 0.05))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Grubbs.of(Decimals.of("1 1 1"), 2, 0.05));
        assertThrows(IllegalArgumentException.class, () -> Grubbs.of(Decimals.of("1 2 3"), 3, 0.05));
    }

    /** By hand: mean 10.001, s 0.001; T 0.06: Cg = 0.012/0.006, Cgk = (0.006 − 0.001)/0.003, t = 0.001/(0.001/√3). */
    @Test
    void aGaugeIsHeldAgainstAFifthOfTheTolerance() {
        Sample sample = Sample.of(Decimals.of("10.000 10.001 10.002"));
        TypeOneStudy study = TypeOneStudy.of(sample, BigDecimal.TEN, new BigDecimal("0.06"), 0.2, 6);
        assertEquals(2, study.cg(), 1e-12);
        assertEquals(5 / 3.0, study.cgk(), 1e-12);
        assertEquals(Math.sqrt(3), study.tOfBias(), 1e-12);
        assertEquals(0, study.bias().compareTo(new BigDecimal("0.001")));
        TypeOneStudy houseRule = TypeOneStudy.of(sample, BigDecimal.TEN, new BigDecimal("0.06"), 0.15, 4);
        assertEquals(0.009 / 0.004, houseRule.cg(), 1e-12);
        assertEquals(0.0035 / 0.002, houseRule.cgk(), 1e-12);
        assertThrows(
                IllegalArgumentException.class, () -> TypeOneStudy.of(sample, BigDecimal.TEN, BigDecimal.ZERO, 0.2, 6));
    }

    /** 1 − 0.05^(1/n), J. A. Hanley and A. Lippman-Hand (1983): 59 parts without a reject show 5 %. */
    @ParameterizedTest
    @CsvSource({"1, 0.95", "5, 0.450720", "58, 0.050339", "59, 0.049508", "300, 0.009936"})
    void noRejectLeavesAnUpperBound(int n, double upper) {
        RejectRate rate = RejectRate.of(n, 0, 0.95);
        assertEquals(upper, rate.upper(), 6e-7);
        assertEquals(0, rate.lower());
    }

    /**
     * Clopper and Pearson (1934), half of 1 - confidence below: pⁿ = 0.025, so 0.025 of one part, √0.025 of two and the
     * fifth root of it of five; by hand 0.4781762⁵ = 0.0250000.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.025", "2, 0.15811388", "5, 0.4781762"})
    void everyPartARejectLeavesHalfOfTheDoubtBelow(int n, double lower) {
        RejectRate rate = RejectRate.of(n, n, 0.95);
        assertEquals(lower, rate.lower(), 6e-8);
        assertEquals(1, rate.upper());
    }

    /**
     * At the bound the binomial leaves just the tail: 1 reject in 1 000 000, and P(X ≤ 1) = 2.5 %, so n p is near
     * 5.5716 (Poisson).
     */
    @Test
    void aRateOfAFewInAMillionHasItsFigures() {
        RejectRate rate = RejectRate.of(1_000_000, 1, 0.95);
        assertEquals(5.5716e-6, rate.upper(), 1e-10);
        assertEquals(0.0253178e-6, rate.lower(), 1e-13);
    }

    @Test
    void moreRejectsThanPartsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> RejectRate.of(3, 4, 0.95));
        assertThrows(IllegalArgumentException.class, () -> RejectRate.of(0, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> RejectRate.of(3, 0, 1));
    }
}
