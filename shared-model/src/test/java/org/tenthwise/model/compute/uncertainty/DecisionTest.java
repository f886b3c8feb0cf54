package org.tenthwise.model.compute.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

class DecisionTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Limits limits(String lower, String upper) {
        return new Limits(
                Optional.ofNullable(lower).map(text -> new Written(text, Unit.MILLIMETRE)),
                Optional.ofNullable(upper).map(text -> new Written(text, Unit.MILLIMETRE)));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            textBlock =
                    """
        # JCGM 106:2012, 7.3.3, example 1, from memory: volts stand as millimetres
        none,   -5.40,  -5.47, 0.05, 0.92,   0.005
        # JCGM 106:2012, 9.5, from memory: ohms stand as millimetres
        1499.8, 1500.2, 1500,  0.12, 0.90,   0.005
        # table of the normal distribution: two standard deviations on both sides
        10,     10.008, 10.004, 0.002, 0.9545, 0.0001
        # on the only limit: one half
        none,   5,      5,     0.01, 0.5,    0
        5,      none,   5,     0.01, 0.5,    0
        # limits that are equal leave no room
        5,      5,      5,     0.01, 0,      0
        """)
    void aSizeConformsWithAProbability(
            String lower, String upper, String size, String u, double probability, double within) {
        assertEquals(probability, Conformance.probability(limits(lower, upper), mm(size), mm(u)), within);
    }

    /** ASME B89.7.3.1, N:1 rule, 0.1 over twice 12.5 µm is 4; ANSI/NCSL Z540.3, 13 µm over twice 2 µm is 3.25. */
    @Test
    void theRatioIsTheToleranceOverTheWholeUncertainty() {
        assertEquals(OptionalDouble.of(4), UncertaintyRatio.of(limits("20.0", "20.1"), mm("0.0125")));
        assertEquals(OptionalDouble.of(3.25), UncertaintyRatio.of(limits("24.980", "24.993"), mm("0.002")));
        assertEquals(OptionalDouble.empty(), UncertaintyRatio.of(limits(null, "20.1"), mm("0.0125")));
    }

    /** JCGM 106:2012, table 1, from memory: 1.64 for 0.95, 2.33 for 0.99. */
    @ParameterizedTest
    @CsvSource(textBlock = """
        0.95, 1.64
        0.99, 2.33
        0.5,  0
        """)
    void aGuardBandIsSoManyStandardUncertainties(String probability, double steps) {
        assertEquals(
                steps,
                GuardBand.width(new BigDecimal(probability), mm("1"))
                        .millimetres()
                        .doubleValue(),
                0.006);
    }

    /** By hand: z of 95 % is 1.644854, JCGM 106:2012, table 1, to more places; times 0.002 and times 3. */
    @ParameterizedTest
    @CsvSource({"0.002, 0.00329", "3, 4.934561", "0, 0"})
    void aGuardBandGrowsWithTheUncertainty(String standardUncertainty, String width) {
        assertEquals(mm(width), GuardBand.width(new BigDecimal("0.95"), mm(standardUncertainty)));
    }

    @Test
    void bandsOfMoreThanHalfTheToleranceLeaveNothing() {
        assertFalse(GuardBand.leavesNothing(limits("20.0", "20.1"), mm("0.05")));
        assertTrue(GuardBand.leavesNothing(limits("20.0", "20.1"), mm("0.050001")));
        assertFalse(GuardBand.leavesNothing(limits(null, "20.1"), mm("5")));
        assertEquals(
                "A probability of 1 gives no guard band: it must be 0.5 or more and less than 1",
                assertThrows(IllegalArgumentException.class, () -> GuardBand.width(BigDecimal.ONE, mm("1")))
                        .getMessage());
    }

    /**
     * JCGM 106:2012, 9.5, resistors, from memory: 1 % and 7 %. The two rows below: its double integral by another
     * program.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        1499.8, 1500.2, 1500,    0.12,   0.04,   0.02,  0.01,    0.07,    0.005
        24.980, 24.993, 24.990,  0.0025, 0.001,  0.001, 0.00519, 0.11931, 0.00001
        30.000, 30.021, 30.0105, 0.004,  0.0015, 0,     0.00224, 0.00755, 0.00001
        """)
    void partsOfAProcessAreTakenAndTurnedAwayWrongly(
            double lower,
            double upper,
            double mean,
            double deviation,
            double u,
            double band,
            double consumer,
            double producer,
            double within) {
        GlobalRisk risk = GlobalRisk.of(new GlobalRisk.Zone(lower, upper, band), mean, deviation, u);
        assertEquals(consumer, risk.consumer(), within);
        assertEquals(producer, risk.producer(), within);
    }

    @Test
    void aBandOfHalfTheToleranceAcceptsNothing() {
        GlobalRisk risk = GlobalRisk.of(new GlobalRisk.Zone(-2, 2, 2), 0, 1, 0.1);
        assertEquals(0, risk.consumer());
        // table of the normal distribution: two standard deviations on both sides
        assertEquals(0.9545, risk.producer(), 0.00005);
    }

    /** ASTM E29, table 1, from memory, and its rule of half to even; every value fails as it stands. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            textBlock =
                    """
        36000, none,   100,  35950,   36000,  true
        36000, none,   100,  35960,   36000,  true
        57,    none,   none, 56.6,    57,     true
        none,  0.5,    none, 0.55,    0.6,    false
        none,  40,     none, 40.4,    40,     true
        none,  40,     none, 40.5,    40,     true
        none,  20.021, none, 20.0214, 20.021, true
        24.98, none,   0.001, 24.9795, 24.980, true
        """)
    void roundingFirstMayTurnAVerdict(
            BigDecimal lower, BigDecimal upper, BigDecimal place, BigDecimal value, String rounded, boolean conforms) {
        RoundingMethod found = RoundingMethod.of(
                value, Optional.ofNullable(lower), Optional.ofNullable(upper), Optional.ofNullable(place));
        assertEquals(rounded, found.rounded().toPlainString());
        assertEquals(conforms, found.byRounding());
        assertFalse(found.absolute());
    }

    @Test
    void aPlaceIsAPowerOfTen() {
        assertEquals(
                "place is 0.5: it must be a power of ten such as 0.001, 1 or 100",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> RoundingMethod.of(
                                        BigDecimal.ONE,
                                        Optional.of(BigDecimal.ONE),
                                        Optional.empty(),
                                        Optional.of(new BigDecimal("0.5"))))
                        .getMessage());
        assertEquals(
                "place is 10000000001: it must be a power of ten such as 0.001, 1 or 100",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> RoundingMethod.of(
                                        BigDecimal.ONE,
                                        Optional.of(BigDecimal.ONE),
                                        Optional.empty(),
                                        Optional.of(new BigDecimal("10000000001"))))
                        .getMessage());
    }

    @Test
    void ofTwoLimitsTheFinerPlaceCounts() {
        assertEquals(
                "24.993",
                RoundingMethod.of(
                                new BigDecimal("24.9934"),
                                Optional.of(new BigDecimal("24.98")),
                                Optional.of(new BigDecimal("24.993")),
                                Optional.empty())
                        .rounded()
                        .toPlainString());
    }

    /** Common practice: a tenth of the whole tolerance is fine enough. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        24.980, 24.993, 0.0013, 0.1, 0.0013, true
        20.0,   20.1,   0.02,   0.2, 0.01,   false
        """)
    void aDivisionIsATenthOfTheToleranceAtMost(
            String lower, String upper, String division, BigDecimal share, String tenth, boolean fine) {
        assertEquals(new RuleOfTen(share, mm(tenth), fine), RuleOfTen.of(mm(lower), mm(upper), mm(division)));
    }
}
