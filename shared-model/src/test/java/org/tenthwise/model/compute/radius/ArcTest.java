package org.tenthwise.model.compute.radius;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The published figures are run with the published cases. */
class ArcTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Length mm(int thousandths) {
        return Length.of(BigDecimal.valueOf(thousandths).movePointLeft(3), Unit.MILLIMETRE);
    }

    /** By hand: chord 20 and radius 50 rise 1.010; 0.01 more of it is 0.485 less of radius. */
    @Test
    void aShallowArcTellsItsRadiusBadly() {
        Arc arc = ArcByChord.ofRadius(mm("20"), mm("50"));
        assertEquals(mm("1.010205"), arc.height());
        assertEquals(-48.49, arc.sensitivity(), 0.005);
    }

    /** By hand: half a turn of radius 5 is 15.707963 long and does not hang on the height. */
    @Test
    void halfATurnHangsOnNothing() {
        Arc arc = ArcByChord.ofHeight(mm("10"), mm("5"));
        assertEquals(mm("5"), arc.radius());
        assertEquals(180, arc.angle(), 1e-12);
        assertEquals(mm("15.707963"), arc.length());
        assertEquals(0, arc.sensitivity(), 1e-12);
        assertEquals(arc.radius(), ArcByChord.ofRadius(mm("10"), mm("5")).height());
    }

    @Property
    void theHeightGivesTheRadiusBack(
            @ForAll @IntRange(min = 1_000, max = 99_000) int chord,
            @ForAll @IntRange(min = 50_000, max = 500_000) int radius) {
        Arc arc = ArcByChord.ofRadius(mm(chord), mm(radius));
        double off = ArcByChord.ofHeight(mm(chord), arc.height())
                .radius()
                .minus(mm(radius))
                .millimetres()
                .doubleValue();
        assertTrue(Math.abs(off) <= 1e-6 + 1e-6 * Math.abs(arc.sensitivity()), () -> "off by " + off);
    }

    /** The centre of the arc is a radius and half a roll from the centre of each roll, found by Pythagoras alone. */
    @Property
    void rollsTouchTheArcTheyAreReadOver(
            @ForAll @IntRange(min = 20_000, max = 90_000) int over,
            @ForAll @IntRange(min = 100, max = 5_000) int drop) {
        double apart = (over - 10_000) / 2000.0;
        double convex =
                ArcOverRolls.convex(mm("10"), mm(over)).radius().millimetres().doubleValue();
        assertEquals(convex + 5, Math.hypot(apart, convex - 5), 2e-6);
        double concave = ArcOverRolls.concave(mm("10"), mm(over), mm(drop))
                .radius()
                .millimetres()
                .doubleValue();
        assertEquals(concave - 5, Math.hypot(apart, concave - 5 - drop / 1000.0), 2e-6);
    }

    @Test
    void anArcThatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ArcByChord.ofRadius(mm("20"), mm("9.999")));
        assertThrows(IllegalArgumentException.class, () -> ArcByChord.ofHeight(mm("0"), mm("1")));
        assertThrows(IllegalArgumentException.class, () -> ArcByChord.ofHeight(mm("20"), mm("-1")));
        assertThrows(IllegalArgumentException.class, () -> ArcOverRolls.convex(mm("10"), mm("19.999")));
        assertThrows(IllegalArgumentException.class, () -> ArcOverRolls.convex(mm("0"), mm("20")));
        assertThrows(IllegalArgumentException.class, () -> ArcOverRolls.concave(mm("10"), mm("70"), mm("0")));
        assertThrows(IllegalArgumentException.class, () -> ArcOverRolls.concave(mm("10"), mm("70"), mm("30.001")));
    }
}
