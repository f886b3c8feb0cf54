package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.compute.roundness.WorkIndicated.mm;
import static org.tenthwise.model.compute.roundness.WorkIndicated.one;
import static org.tenthwise.model.compute.roundness.WorkIndicated.two;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.Holding;

/** What no move puts right, and readings that contradict each other; figures by hand. */
class TruingUpWithoutMovesTest {

    /** An oval of ± 0.0105 leaves 0.021 over; of ± 0.010 the limit itself, which can still be reached. */
    @ParameterizedTest
    @EnumSource(Holding.class)
    void whatIsFormAloneIsNotMoved(Holding holding) {
        TruingUp form = one(holding, "0.026;-0.0105;-0.005;-0.0105");
        assertEquals(new TruingUp(TruingUp.Case.FORM, List.of(), List.of(), mm("0.021")), form);
        TruingUp reachable = one(holding, "0.026;-0.010;-0.006;-0.010");
        assertEquals(TruingUp.Case.MOVE, reachable.state());
        assertEquals(mm("0.020"), reachable.formLeft());
    }

    @Test
    void formInEitherSectionIsEnough() {
        String form = "0.026;-0.0105;-0.005;-0.0105";
        assertEquals(
                TruingUp.Case.FORM,
                two(Holding.FOUR_JAW, form, "0.032;0.016;0;0.016").state());
        assertEquals(
                TruingUp.Case.FORM,
                two(Holding.FOUR_JAW, "0.032;0.016;0;0.016", form).state());
    }

    /** A burr between the readings: 0.040 over the turn, of which 2 · 0.005 is off centre. */
    @Test
    void aBurrThatOnlyTheSweepFoundIsForm() {
        assertEquals(
                new TruingUp(TruingUp.Case.FORM, List.of(), List.of(), mm("0.030")),
                one(Holding.FOUR_JAW, "0.010;0.005;0;0.005;0.040"));
    }

    /**
     * 0.001 off each way, 0.0014 in all and under a tenth of the limit, and an oval of ± 0.010: 0.022 over the points.
     */
    @ParameterizedTest
    @EnumSource(Holding.class)
    void nothingWorthMovingIsNothingToMove(Holding holding) {
        assertEquals(
                new TruingUp(TruingUp.Case.NOTHING_TO_MOVE, List.of(), List.of(), mm("0.020")),
                one(holding, "0.011;-0.009;0.009;-0.011"));
    }

    /** Points may swing two last places further than the sweep, no more. */
    @Test
    void pointsThatSwingFurtherThanTheTurnContradictIt() {
        assertEquals(
                TruingUp.Case.MOVE,
                one(Holding.FOUR_JAW, "0.032;0.016;0;0.016;0.030").state());
        TruingUp contradiction = one(Holding.FOUR_JAW, "0.032;0.016;0;0.016;0.0299");
        assertEquals(TruingUp.Case.CONTRADICTION, contradiction.state());
        assertEquals(List.of(), contradiction.near());
        assertEquals(
                TruingUp.Case.CONTRADICTION,
                two(Holding.FOUR_JAW, "0.032;0.016;0;0.016", "0.032;0.016;0;0.016;0.0299")
                        .state());
    }
}
