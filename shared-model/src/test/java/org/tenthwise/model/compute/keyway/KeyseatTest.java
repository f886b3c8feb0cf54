package org.tenthwise.model.compute.keyway;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The published figures are run with the published cases. */
class KeyseatTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** By hand: shaft 10, keyway 6 wide: its edges lie (10 − 8) / 2 below the crest. */
    @Test
    void theEdgesLieBelowTheCrest() {
        assertEquals(mm("1"), new Keyseat(mm("10"), mm("6")).crest());
    }

    /** The edges of the keyway lie on the shaft. */
    @Property
    void theEdgesLieOnTheShaft(@ForAll @IntRange(min = 1, max = 99) int width) {
        Length crest = new Keyseat(mm("100"), mm(Integer.toString(width))).crest();
        assertEquals(50, Math.hypot(width / 2.0, 50 - crest.millimetres().doubleValue()), 1e-6);
    }

    @Test
    void aKeywayAsWideAsTheShaftIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Keyseat(mm("10"), mm("10")));
        assertThrows(IllegalArgumentException.class, () -> new Keyseat(mm("10"), mm("12")));
        assertThrows(IllegalArgumentException.class, () -> new Keyseat(mm("10"), mm("0")));
    }

    @Test
    void aKeyThatLeavesNoShaftIsRefused() {
        Keyseat keyseat = new Keyseat(mm("10"), mm("6"));
        assertThrows(IllegalArgumentException.class, () -> keyseat.farSide(mm("18")));
        assertThrows(IllegalArgumentException.class, () -> keyseat.farSide(mm("0")));
    }
}
