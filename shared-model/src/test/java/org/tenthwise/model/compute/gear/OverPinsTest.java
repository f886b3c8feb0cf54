package org.tenthwise.model.compute.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;

/** The published figures are run with the published cases; here the pins are laid against the flanks point by point. */
class OverPinsTest {

    private static InvoluteTeeth teeth(int number, String module, String angle, String helix) {
        return new InvoluteTeeth(number, mm(module), new BigDecimal(angle), new BigDecimal(helix));
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** Tables of the involute function as gear handbooks print them, from memory. */
    @ParameterizedTest
    @CsvSource({"14.5, 0.0055448", "20, 0.0149044", "25, 0.0299753", "30, 0.0537515"})
    void theInvoluteIsTheOneOfTheTables(double degrees, double involute) {
        assertEquals(involute, Involute.of(Math.toRadians(degrees)), 5e-8);
    }

    /** By hand, module 3.5, 20°, helix 21°: 0.3639702343 / 0.9335804265 = 0.3898648943, the tangent of it. */
    @Test
    void theTransversePressureAngleIsWorkedFromTheNormalOne() {
        assertEquals(21.2990642859, Math.toDegrees(teeth(31, "3.5", "20", "21").transverseAngle()), 5e-10);
    }

    @Property
    void theInvoluteComesBack(@ForAll @DoubleRange(min = 0, max = 1.55) double angle) {
        assertEquals(
                Involute.of(angle),
                Involute.of(Involute.angle(Involute.of(angle))),
                1e-14 + Involute.of(angle) * 1e-13);
    }

    @Test
    void noInvoluteIsLessThanZero() {
        assertEquals(0, Involute.angle(0));
        assertThrows(IllegalArgumentException.class, () -> Involute.angle(-1e-9));
    }

    /** Nearest a point of the flank comes to the centre of the pin, walked along the involute: half the pin. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        24, 2,   30, -0.05, 4,     EXTERNAL
        25, 2,   30, 0,     3.5,   EXTERNAL
        11, 1.5, 20, 0.3,   2.9,   EXTERNAL
        24, 2,   30, 0,     3.5,   INTERNAL
        25, 2,   30, 0.05,  3.5,   INTERNAL
        41, 3,   20, 0,     5.040, INTERNAL
        """)
    void aPinTouchesTheFlankWhereItIsSaidTo(
            int number, String module, String angle, String shift, String pin, ToothSide side) {
        InvoluteTeeth teeth = teeth(number, module, angle, "0");
        Length thickness = teeth.thickness(new BigDecimal(shift));
        OverPins.Rest rest = new OverPins(teeth, mm(pin), side).rest(thickness);
        int sign = side == ToothSide.EXTERNAL ? 1 : -1;
        double facing = number % 2 == 0 ? 1 : Math.cos(Math.PI / 2 / number);
        double centre = (Nanometres.of(rest.measured()) - sign * Nanometres.of(mm(pin))) / facing / 2;
        double base = teeth.baseDiameter() / 2;
        double reference = number * Nanometres.of(mm(module)) / 2;
        // the middle of a space lies at angle 0, its flank at half the space from there on the reference circle
        double space = (Math.PI * Nanometres.of(mm(module)) - Nanometres.of(thickness)) / 2 / reference;
        double nearest = Double.MAX_VALUE;
        double on = 0;
        for (double roll = 0; roll < 1.5; roll += 1e-5) {
            double radius = base * Math.hypot(1, roll);
            double polar = space + sign * (roll - Math.atan(roll) - Involute.of(teeth.transverseAngle()));
            double away = Math.hypot(radius * Math.cos(polar) - centre, radius * Math.sin(polar));
            if (away < nearest) {
                nearest = away;
                on = 2 * radius;
            }
        }
        assertEquals(Nanometres.of(mm(pin)) / 2, nearest, 2e-6);
        assertEquals(Nanometres.of(rest.contactDiameter()), on, 2e-3);
    }

    @Property
    void whatIsReadOverPinsGivesTheThicknessBack(
            @ForAll @IntRange(min = 24, max = 90) int number,
            @ForAll @IntRange(min = 0, max = 30) int helix,
            @ForAll @IntRange(min = 140, max = 175) int tenThousandths,
            @ForAll boolean external) {
        InvoluteTeeth teeth = teeth(number, "2", "30", Integer.toString(helix));
        Length thickness = Length.of(BigDecimal.valueOf(tenThousandths).movePointLeft(4), Unit.MILLIMETRE)
                .times(BigDecimal.valueOf(200));
        OverPins pins = new OverPins(teeth, mm("3.6"), external ? ToothSide.EXTERNAL : ToothSide.INTERNAL);
        Length measured = pins.rest(thickness).measured();
        assertTrue(pins.thickness(measured).minus(thickness).abs().compareTo(mm("0.000003")) <= 0);
    }

    /** A wider tooth by 0.001 reads more over pins by a thousandth of the factor, and between pins less. */
    @ParameterizedTest
    @EnumSource(ToothSide.class)
    void theFactorTellsHowFarTheReadingMoves(ToothSide side) {
        OverPins pins = new OverPins(teeth(25, "2", "30", "0"), mm("3.5"), side);
        OverPins.Rest before = pins.rest(mm("3.1"));
        double moved = Nanometres.of(pins.rest(mm("3.101")).measured().minus(before.measured())) * 1000;
        assertEquals(side == ToothSide.EXTERNAL ? before.changeFactor() : -before.changeFactor(), moved, 0.003);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # so thin that it lies under the base circle; so thick that the flanks have met below it
        24, 0.8, EXTERNAL
        24, 40,  EXTERNAL
        # so thick that it finds no room between inner flanks
        24, 6,   INTERNAL
        """)
    void aPinThatCannotTouchIsRefused(int number, String pin, ToothSide side) {
        OverPins pins = new OverPins(teeth(number, "2", "20", "0"), mm(pin), side);
        Length thickness = pins.teeth().thickness(BigDecimal.ZERO);
        assertThrows(IllegalArgumentException.class, () -> pins.rest(thickness));
    }

    @Test
    void aReadingThatNoTeethCanGiveIsRefused() {
        OverPins outside = new OverPins(teeth(24, "2", "30", "0"), mm("4"), ToothSide.EXTERNAL);
        assertThrows(IllegalArgumentException.class, () -> outside.thickness(mm("45.5")), "base circle");
        assertThrows(IllegalArgumentException.class, () -> outside.thickness(mm("60")), "thicker than the pitch");
        OverPins inside = new OverPins(teeth(24, "2", "30", "0"), mm("3.5"), ToothSide.INTERNAL);
        assertThrows(IllegalArgumentException.class, () -> inside.thickness(mm("30")), "no space");
        assertThrows(IllegalArgumentException.class, () -> inside.thickness(mm("52")), "no tooth");
    }

    @ParameterizedTest
    @CsvSource({"2, 2, 20, 0", "24, 0, 20, 0", "24, 2, 0, 0", "24, 2, 90, 0", "24, 2, 20, -1", "24, 2, 20, 90"})
    void teethThatCannotBeAreRefused(int number, String module, String angle, String helix) {
        assertThrows(IllegalArgumentException.class, () -> teeth(number, module, angle, helix));
    }

    /** Over one tooth more the span grows by the base pitch, by hand: π m cos a. */
    @ParameterizedTest
    @CsvSource({"24, 2, 30, 4, 5.441398", "32, 5, 20, 4, 14.760657"})
    void oneToothMoreAddsTheBasePitch(int number, String module, String angle, int over, String pitch) {
        InvoluteTeeth teeth = teeth(number, module, angle, "0");
        Length thickness = teeth.thickness(BigDecimal.ZERO);
        Length few = new OverTeeth(teeth, over).span(thickness);
        assertEquals(mm(pitch), new OverTeeth(teeth, over + 1).span(thickness).minus(few));
        assertEquals(thickness, new OverTeeth(teeth, over).thickness(few));
    }

    @Test
    void aSpanOutsideTheFlanksIsRefused() {
        InvoluteTeeth teeth = teeth(24, "2", "20", "0");
        Length thickness = teeth.thickness(BigDecimal.ZERO);
        assertEquals(3, new OverTeeth(teeth, 3).usual());
        assertThrows(IllegalArgumentException.class, () -> new OverTeeth(teeth, 12).span(thickness));
        assertThrows(IllegalArgumentException.class, () -> new OverTeeth(teeth, 24));
        assertThrows(IllegalArgumentException.class, () -> new OverTeeth(teeth, 3).thickness(mm("30")));
    }

    @Test
    void aShiftThatLeavesNoToothIsRefused() {
        InvoluteTeeth teeth = teeth(24, "2", "20", "0");
        assertThrows(IllegalArgumentException.class, () -> teeth.thickness(new BigDecimal("-2.2")));
        assertThrows(IllegalArgumentException.class, () -> teeth.thickness(new BigDecimal("2.2")));
    }
}
