package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class HalfWayTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** Common practice; 0.3625 are left in the bore, by hand. */
    @Test
    void halfOfWhatIsLeftComesOffFirst() {
        assertEquals(
                new HalfWay(mm("0.18125"), mm("0.090625"), mm("29.82925")),
                HalfWay.of(Feature.BORE, mm("29.648"), mm("30.0105")));
    }

    @Test
    void atTheAimAndPastItThereIsNoFirstCut() {
        assertThrows(IllegalArgumentException.class, () -> HalfWay.of(Feature.BORE, mm("30"), mm("30")));
        assertThrows(IllegalArgumentException.class, () -> HalfWay.of(Feature.DIAMETER, mm("29.9"), mm("30")));
    }
}
