package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.compute.roundness.WorkIndicated.LIMIT;
import static org.tenthwise.model.compute.roundness.WorkIndicated.indicated;
import static org.tenthwise.model.compute.roundness.WorkIndicated.jaw;
import static org.tenthwise.model.compute.roundness.WorkIndicated.mm;
import static org.tenthwise.model.compute.roundness.WorkIndicated.one;
import static org.tenthwise.model.compute.roundness.WorkIndicated.tap;
import static org.tenthwise.model.compute.roundness.WorkIndicated.two;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.Holding;

/** The order of the hand is common practice of the lathe; figures by hand, half the difference of opposite readings. */
class TruingUpTest {

    @Test
    void ofFourJawsTheWorseAxisGoesFirstAndTheJawOppositeIsLoosened() {
        assertEquals(
                List.of(jaw(3, 1, "0.016"), jaw(4, 2, "0.008")),
                one(Holding.FOUR_JAW, "0.032;0.024;0;0.008").near());
        assertEquals(
                List.of(jaw(2, 4, "0.016"), jaw(1, 3, "0.008")),
                one(Holding.FOUR_JAW, "0.008;0;0.024;0.032").near());
    }

    /** Jaw 1 at 90: what is high at 0 is high at jaw 4. */
    @Test
    void jawsAreCountedFromWhereTheFirstStands() {
        assertEquals(
                List.of(jaw(2, 4, "0.016")),
                TruingUp.of(
                                Holding.FOUR_JAW,
                                new BigDecimal("90"),
                                LIMIT,
                                mm("0.001"),
                                indicated("0.032;0.016;0;0.016"),
                                Optional.empty())
                        .near());
    }

    /** A tenth of the limit is 0.002. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0.032;0.018;0;0.014,   0.001, 2
        0.032;0.0179;0;0.0141, 0.001, 1
        # an indicator read to 0.005: an axis that is 0.004 off is left alone
        0.032;0.020;0;0.012,   0.005, 1
        0.032;0.020;0;0.012,   0.004, 2
        """)
    void whatIsUnderATenthOfTheLimitOrUnderTheLastPlaceIsLeft(String readings, String lastPlace, int moves) {
        assertEquals(
                moves,
                TruingUp.of(
                                Holding.FOUR_JAW,
                                BigDecimal.ZERO,
                                LIMIT,
                                mm(lastPlace),
                                indicated(readings),
                                Optional.empty())
                        .near()
                        .size());
    }

    @Test
    void inTwoSectionsTheJawsTakeTheNearOneAndAMalletTheLean() {
        TruingUp advice = two(Holding.FOUR_JAW, "0.032;0.016;0;0.016", "0.020;0.050;0;-0.030");
        assertEquals(List.of(jaw(3, 1, "0.016")), advice.near());
        assertEquals(List.of(tap("-0.006", "0.040")), advice.far());
    }

    @Test
    void workThatIsOnlyShiftedIsNotTapped() {
        assertEquals(
                List.of(),
                two(Holding.FOUR_JAW, "0.032;0.016;0;0.016", "0.032;0.016;0;0.016")
                        .far());
    }

    @Test
    void workThatOnlyLeansIsNotMovedByTheJaws() {
        TruingUp advice = two(Holding.FOUR_JAW, "0;0;0;0", "0.032;0.016;0;0.016");
        assertEquals(List.of(), advice.near());
        assertEquals(List.of(tap("0.016", "0")), advice.far());
    }

    /** Shims of 3/2 of what stands off, by the rule of {@link JawMovesTest}: 0.016 towards jaw 1 is a shim of 0.024. */
    @Test
    void threeJawsAreCleanedAndTheWorkTurnedBeforeAnyShim() {
        assertEquals(
                List.of(
                        Move.Plain.CLEAN_JAWS,
                        Move.Plain.TURN_IN_JAWS,
                        new Move.Shim(1, mm("0.024")),
                        Move.Plain.BORE_SOFT_JAWS),
                one(Holding.THREE_JAW, "0.032;0.016;0;0.016").near());
        assertEquals(
                List.of(
                        Move.Plain.CLEAN_JAWS,
                        Move.Plain.TURN_IN_JAWS,
                        Move.Plain.BORE_SOFT_JAWS,
                        new Move.Shim(1, mm("0.024"))),
                one(Holding.POWER_CHUCK, "0.032;0.016;0;0.016").near());
    }

    /** Clamping anew changes what the far section showed. */
    @Test
    void whereTheWorkIsClampedAnewNothingIsSaidOfTheFarSectionYet() {
        for (Holding holding : List.of(
                Holding.THREE_JAW,
                Holding.POWER_CHUCK,
                Holding.COLLET,
                Holding.CENTRES,
                Holding.STEADY,
                Holding.UNSAID)) {
            TruingUp advice = two(holding, "0.032;0.016;0;0.016", "0.020;0.050;0;-0.030");
            assertFalse(advice.near().isEmpty(), holding::key);
            assertEquals(List.of(), advice.far(), holding::key);
        }
    }

    /** 0.006 off near the jaws is 0.012, inside: left alone. */
    @Test
    void whereTheNearSectionIsInsideOnlyTheLeanIsTakenAway() {
        String near = "0.012;0.006;0;0.006";
        String far = "0.006;0.026;0.006;-0.014";
        assertEquals(List.of(), two(Holding.THREE_JAW, near, far).near());
        assertEquals(
                List.of(tap("-0.006", "0.020")),
                two(Holding.THREE_JAW, near, far).far());
        assertEquals(
                List.of(Move.Plain.EASE_PADS, tap("-0.006", "0.020"), Move.Plain.PADS_BACK),
                two(Holding.STEADY, near, far).far());
        assertEquals(
                List.of(Move.Plain.CLEAN_JAWS, Move.Plain.TURN_IN_JAWS, Move.Plain.BORE_SOFT_JAWS),
                two(Holding.POWER_CHUCK, near, far).near());
    }

    /**
     * Off by 0.010 it runs out by 0.020, the limit itself; what stays of an oval of ± 0.002 or 0.003 is 0.004 or 0.006
     * more.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # near, is over
        0.021;0.0105;0;0.0105,      true
        0.020;0.010;0;0.010,        false
        0.011;-0.003;-0.005;-0.003, true
        0.010;-0.002;-0.006;-0.002, false
        """)
    void aSectionRunsOutByTwiceWhatItStandsOffAndWhatStays(String near, boolean over) {
        TruingUp advice = two(Holding.THREE_JAW, near, "0.040;0.040;0;0");
        assertEquals(over, advice.far().isEmpty());
        assertEquals(over, advice.near().contains(Move.Plain.TURN_IN_JAWS));
    }

    /** Work leaning to a side that nothing moves alone is clamped anew whichever section is over. */
    @ParameterizedTest
    @CsvSource({
        "COLLET, CLEAN_COLLET, TURN_IN_COLLET, OTHER_COLLET",
        "CENTRES, CLEAN_CENTRES, TURN_AGAINST_DRIVER, DRESS_CENTRES"
    })
    void aLeanAloneIsReasonToClampAnew(Holding holding, Move.Plain first, Move.Plain second, Move.Plain third) {
        assertEquals(
                List.of(first, second, third),
                two(holding, "0;0;0;0", "0.032;0.016;0;0.016").near());
    }

    /**
     * Three jaws give the work two thirds of the sum of their shims: 0.003 at jaw 1 and 0.024 at jaw 2 come to (−0.006,
     * 0.013856), 0.0015 and 0.024 to (−0.007, 0.013856). A tenth of the limit is 0.002.
     */
    @ParameterizedTest
    @CsvSource({"-0.006;0.013856;0.006;-0.013856, 2 1", "-0.007;0.013856;0.007;-0.013856, 2"})
    void theThickerShimIsNamedFirstAndOneNotWorthItNotAtAll(String readings, String jaws) {
        assertEquals(
                jaws,
                one(Holding.THREE_JAW, readings).near().stream()
                        .filter(Move.Shim.class::isInstance)
                        .map(move -> String.valueOf(((Move.Shim) move).under()))
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void whereThePlanDoesNotSayWhatHoldsTheWorkItIsOnlySaidWhichWay() {
        Eccentricity shift = new Eccentricity(mm("0.016"), mm("0"));
        assertEquals(
                List.of(new Move.Away(shift)),
                one(Holding.UNSAID, "0.032;0.016;0;0.016").near());
        assertEquals(
                List.of(new Move.Away(shift)),
                two(Holding.STEADY, "0.032;0.016;0;0.016", "0;0;0;0").near());
        assertEquals(
                List.of(new Move.Away(shift)),
                two(Holding.UNSAID, "0;0;0;0", "0.032;0.016;0;0.016").far());
    }

    /**
     * 0.006 off at both is 0.012, inside near the jaws; far out an oval of 0.010 comes to it. Nothing leans, so the
     * work is shifted.
     */
    @Test
    void aShiftThatPutsOnlyTheFarSectionOverIsTakenAway() {
        String near = "0.012;0.006;0;0.006";
        String far = "0.017;0.001;0.005;0.001";
        Eccentricity shift = new Eccentricity(mm("0.006"), mm("0"));
        assertEquals(
                List.of(new Move.Away(shift)), two(Holding.STEADY, near, far).near());
        assertEquals(
                List.of(new Move.Away(shift)), two(Holding.UNSAID, near, far).near());
        for (Holding holding : List.of(Holding.THREE_JAW, Holding.POWER_CHUCK)) {
            assertTrue(two(holding, near, far).near().contains(new Move.Shim(1, mm("0.009"))), holding::key);
        }
    }

    @ParameterizedTest
    @EnumSource(Holding.class)
    void onlyFourJawsThatMoveAloneAreMoved(Holding holding) {
        TruingUp advice = two(holding, "0.032;0.016;0;0.016", "0.020;0.050;0;-0.030");
        assertEquals(holding == Holding.FOUR_JAW, advice.near().stream().anyMatch(Move.Jaw.class::isInstance));
        assertFalse(advice.far().stream().anyMatch(Move.Jaw.class::isInstance));
        assertEquals(TruingUp.Case.MOVE, advice.state());
    }
}
