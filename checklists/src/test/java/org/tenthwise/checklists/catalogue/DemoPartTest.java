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
    void theScrewCarrierHasThirtyFiveChecksAndSixHoldPoints() {
        Plan plan = DemoPart.SCREW_CARRIER.plan();
        assertEquals(new PartId("LG-2207", "C"), plan.part());
        assertEquals(35, plan.steps().size());
        assertEquals(
                6, plan.steps().stream().filter(step -> !step.hold().isEmpty()).count());
    }

    @Test
    void theWinchBarrelEndHasThirtyOneChecksAndFiveHoldPoints() {
        Plan plan = DemoPart.WINCH_BARREL_END.plan();
        assertEquals(new PartId("WB-118", "B"), plan.part());
        assertEquals(31, plan.steps().size());
        assertEquals(
                5, plan.steps().stream().filter(step -> !step.hold().isEmpty()).count());
    }
}
