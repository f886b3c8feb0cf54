package org.tenthwise.model.compute.taper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/** Circles are laid against the side of a cone here, and what they are read as gives the cone back. */
class TaperPropertyTest {

    private static final double SMALL = 1e-5;

    private static Length mm(double millimetres) {
        return Nanometres.round(millimetres);
    }

    @Property
    void everyWayOfWritingItGivesTheSameTaper(@ForAll @IntRange(min = 1, max = 1799) int tenths) {
        Taper taper = Taper.ofIncluded(BigDecimal.valueOf(tenths, 1));
        assertEquals(tenths / 10.0, taper.included(), 1e-9);
        assertEquals(taper.included(), 2 * taper.half(), 1e-9);
        assertEquals(
                taper.included(),
                Taper.ofPerUnit(BigDecimal.valueOf(taper.perUnit())).included(),
                1e-9);
        assertEquals(
                taper.included(),
                Taper.ofPerFoot(BigDecimal.valueOf(taper.perFoot())).included(),
                1e-9);
        assertEquals(1, taper.oneIn() * taper.perUnit(), 1e-12);
    }

    /** The middle of a roller stands its radius square off the side: found without any half-angle formula. */
    private static double over(double small, double slope, double roller, double bottom) {
        double radius = roller / 2;
        double side = small / 2 + slope * (bottom + radius);
        double middle = side + radius * Math.sqrt(1 + slope * slope);
        return 2 * (middle + radius);
    }

    @Property
    void rollersOnAPlateAndOnBlocksGiveTheConeBack(
            @ForAll @IntRange(min = 20, max = 60) int end,
            @ForAll @IntRange(min = 2, max = 40) int degrees,
            @ForAll boolean smallDown,
            @ForAll @IntRange(min = 4, max = 12) int roller) {
        double slope = Math.tan(Math.toRadians(degrees / 4.0)) * (smallDown ? 1 : -1);
        TaperOverRollers read =
                new TaperOverRollers(mm(over(end, slope, roller, 0)), mm(over(end, slope, roller, 40)), mm(40));
        assertEquals(smallDown, read.smallEndDown());
        assertEquals(degrees / 2.0, read.taper().included(), SMALL);
        assertEquals(end, Nanometres.of(read.atThePlate(mm(roller))), SMALL);
    }

    @Property
    void aSlipOfAReadingTurnsTheAngleAsSaid(@ForAll @IntRange(min = 2, max = 120) int degrees) {
        double slope = Math.tan(Math.toRadians(degrees / 4.0));
        Length low = mm(over(60, slope, 10, 0));
        Length high = mm(over(60, slope, 10, 40));
        TaperOverRollers read = new TaperOverRollers(low, high, mm(40));
        TaperOverRollers slipped = new TaperOverRollers(low, high.plus(mm(0.001)), mm(40));
        assertEquals(slipped.taper().included() - read.taper().included(), read.turnsBy(mm(0.001)), 1e-6);
    }

    @Property
    void twoBallsGiveTheConeBack(
            @ForAll @IntRange(min = 30, max = 60) int mouth, @ForAll @IntRange(min = 4, max = 60) int degrees) {
        double half = Math.toRadians(degrees / 2.0);
        // the middle of a ball of radius r lies where the cone is r / cos h from the axis
        double large = mouth * 0.95;
        double small = mouth * 0.6;
        double largeMiddle = (mouth / 2.0 - large / 2 / Math.cos(half)) / Math.tan(half);
        double smallMiddle = (mouth / 2.0 - small / 2 / Math.cos(half)) / Math.tan(half);
        if (largeMiddle + large / 2 * Math.sin(half) <= 0.01) {
            return;
        }
        TaperByBalls balls =
                new TaperByBalls(mm(large), mm(small), mm(largeMiddle - large / 2), mm(smallMiddle - small / 2));
        assertEquals(degrees, balls.taper().included(), 1e-3);
        assertEquals(mouth, Nanometres.of(balls.mouth()), 1e-3);
    }

    @Property
    void aStackGivesItsAngleBack(@ForAll @IntRange(min = 1, max = 8900) int hundredths) {
        SineBar bar = new SineBar(mm(100));
        BigDecimal angle = BigDecimal.valueOf(hundredths, 2);
        assertEquals(angle.doubleValue(), bar.angle(bar.stack(angle)), 1e-4);
        assertTrue(bar.angleError(angle.doubleValue(), mm(-0.001)) < 0);
    }
}
