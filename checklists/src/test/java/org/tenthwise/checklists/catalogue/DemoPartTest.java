package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;

class DemoPartTest {

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void everyDemoPlanIsSoundAndSaysThatItIsInvented(DemoPart part) {
        Plan plan = part.plan();
        assertEquals("Invented part, for trying out", plan.remark());
        assertEquals(part.planText(), plan.source().text());
        assertTrue(plan.outline().isPresent());
    }

    @Test
    void theScrewCarrierHasTwentyFourChecksAndThreeHoldPoints() {
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        assertEquals(new PartId("LG-2207", "C"), plan.part());
        assertEquals(24, plan.steps().size());
        assertEquals(3, plan.steps().stream().filter(step -> !step.hold().isEmpty()).count());
    }

    @Test
    void theWinchBarrelEndHasEighteenChecksAndTwoHoldPoints() {
        Plan plan = DemoPart.WINCH_BARREL_END.plan();
        assertEquals(new PartId("WB-118", "B"), plan.part());
        assertEquals(18, plan.steps().size());
        assertEquals(2, plan.steps().stream().filter(step -> !step.hold().isEmpty()).count());
    }
}
