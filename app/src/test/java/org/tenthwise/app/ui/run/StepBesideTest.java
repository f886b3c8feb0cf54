package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StepBesideTest {

    private final StepBeside beside = new StepBeside();

    private void turnsTo(int way, int place) {
        beside.turn(way);
        assertEquals(place, beside.place());
    }

    @Test
    void theNextStandsBesideTheOneInHandAndTheLastHasTheOneBefore() {
        beside.show(3, 0);
        assertEquals(1, beside.place());
        beside.show(3, 1);
        assertEquals(2, beside.place());
        beside.show(3, 2);
        assertEquals(1, beside.place());
    }

    @Test
    void theOneInHandIsPassedOverBothWays() {
        beside.show(4, 1);
        turnsTo(-1, 0);
        turnsTo(1, 2);
        turnsTo(1, 3);
    }

    @Test
    void nothingLiesPastTheEnds() {
        beside.show(3, 0);
        assertFalse(beside.hasEarlier());
        turnsTo(-1, 1);
        assertTrue(beside.hasLater());
        turnsTo(1, 2);
        assertFalse(beside.hasLater());
        turnsTo(1, 2);
        beside.show(3, 2);
        assertFalse(beside.hasLater());
        assertTrue(beside.hasEarlier());
    }

    @Test
    void whatIsLookedForStaysWhileTheSameStepIsInHand() {
        beside.show(5, 1);
        turnsTo(1, 3);
        beside.show(5, 1);
        assertEquals(3, beside.place());
        beside.show(5, 2);
        assertEquals(3, beside.place());
        beside.turn(1);
        beside.show(5, 3);
        assertEquals(4, beside.place());
    }

    @Test
    void aPlanOfOneStepHasNoOther() {
        beside.show(1, 0);
        assertTrue(beside.isNone());
        assertFalse(beside.hasEarlier());
        assertFalse(beside.hasLater());
        beside.show(2, 0);
        assertFalse(beside.isNone());
    }
}
