package org.tenthwise.model.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/**
 * Sizes are made up round the limits of 20 H7, 20.000 to 20.021 mm (published, ISO 286-2); the standing follows from
 * the rule: on a limit is in (limits of size, ISO 286-1), guard band as in ISO 14253-1.
 */
class JudgeTest {

    private static final Limits LIMITS =
            Limits.between(new Written("20.000", Unit.MILLIMETRE), new Written("20.021", Unit.MILLIMETRE));

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        20.000,       PASS
        20.021,       PASS
        20.0000,      PASS
        20.010,       PASS
        19.999,       FAIL
        20.022,       FAIL
        19.9999,      FAIL
        20.0211,      FAIL
        20.0210000001, FAIL
        """)
    void sizeOnALimitIsInsideAndOneLastDigitBeyondIsOut(String size, VerdictKind standing) {
        assertEquals(
                standing,
                new Judge(LIMITS, Length.ZERO, Optional.empty()).of(mm(size)).standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # guard band 0.002
        19.997,  FAIL
        19.998,  UNPROVEN
        20.000,  UNPROVEN
        20.0019, UNPROVEN
        20.002,  PASS
        20.019,  PASS
        20.0191, UNPROVEN
        20.021,  UNPROVEN
        20.023,  UNPROVEN
        20.0231, FAIL
        """)
    void guardBandLeavesSizesUnprovenOnBothSidesOfALimit(String size, VerdictKind standing) {
        assertEquals(
                standing,
                new Judge(LIMITS, mm("0.002"), Optional.empty()).of(mm(size)).standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # a bore that is too small can still be cut, one that is too large cannot; and the other way round outside
        LOWER, 19.999, CUT_AGAIN
        LOWER, 20.000, PASS
        LOWER, 20.022, FAIL
        UPPER, 20.022, CUT_AGAIN
        UPPER, 20.021, PASS
        UPPER, 19.999, FAIL
        """)
    void outOnTheSideWithMetalLeftIsCutAgain(Limit stillCutBeyond, String size, VerdictKind standing) {
        assertEquals(
                standing,
                new Judge(LIMITS, Length.ZERO, Optional.of(stillCutBeyond))
                        .of(mm(size))
                        .standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        19.9979, CUT_AGAIN
        19.998, UNPROVEN
        19.999, UNPROVEN
        20.001, UNPROVEN
        20.022, UNPROVEN
        20.024, FAIL
        """)
    void withinTheGuardBandASizeIsUnprovenAtEitherLimitWhetherMetalIsLeftOrNot(String size, VerdictKind standing) {
        assertEquals(
                standing,
                new Judge(LIMITS, mm("0.002"), Optional.of(Limit.LOWER))
                        .of(mm(size))
                        .standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        20.003, 0.003, LOWER, true
        20.000, 0,     LOWER, true
        20.019, 0.002, UPPER, true
        20.0105, 0.0105, LOWER, true
        19.995, 0.005, LOWER, false
        20.022, 0.001, UPPER, false
        """)
    void marginIsTheDistanceToTheNearerLimit(String size, String distance, Limit limit, boolean inside) {
        assertEquals(
                Optional.of(new Verdict.Margin(mm(distance), limit, inside)),
                new Judge(LIMITS, Length.ZERO, Optional.empty()).of(mm(size)).margin());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0,      PASS, 0.01,   true
        0.01,   PASS, 0,      true
        0.0101, FAIL, 0.0001, false
        -5,     PASS, 5.01,   true
        """)
    void oneUpperLimitLeavesTheOtherSideOpen(String size, VerdictKind standing, String distance, boolean inside) {
        Verdict verdict = new Judge(Limits.atMost(new Written("0.01", Unit.MILLIMETRE)), Length.ZERO, Optional.empty())
                .of(mm(size));
        assertEquals(standing, verdict.standing());
        assertEquals(Optional.of(new Verdict.Margin(mm(distance), Limit.UPPER, inside)), verdict.margin());
    }

    @Test
    void oneLowerLimitLeavesTheOtherSideOpen() {
        Judge judge = new Judge(
                new Limits(Optional.of(new Written("1.5", Unit.INCH)), Optional.empty()),
                Length.ZERO,
                Optional.of(Limit.LOWER));
        assertEquals(VerdictKind.PASS, judge.of(mm("38.1")).standing());
        assertEquals(VerdictKind.PASS, judge.of(mm("1000")).standing());
        assertEquals(VerdictKind.CUT_AGAIN, judge.of(mm("38.0999")).standing());
    }

    @Test
    void guardBandBelowZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Judge(LIMITS, mm("-0.001"), Optional.empty()));
    }

    @Test
    void onlyAPassHasPassed() {
        for (VerdictKind standing : VerdictKind.values()) {
            assertEquals(standing == VerdictKind.PASS, Verdict.plain(standing).passed());
        }
        assertTrue(Verdict.plain(VerdictKind.PASS).margin().isEmpty());
        assertFalse(Verdict.plain(VerdictKind.OPEN).passed());
    }
}
