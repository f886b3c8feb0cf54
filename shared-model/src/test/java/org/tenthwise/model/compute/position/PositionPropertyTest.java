package org.tenthwise.model.compute.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.MaterialModifier;

class PositionPropertyTest {

    private static final double NANOMETRE = 1e-6;

    private static Length micrometres(int count) {
        return new Length(BigDecimal.valueOf(count, 3));
    }

    @Property
    void aTurnedFrameChangesNothing(
            @ForAll @IntRange(min = -500, max = 500) int x,
            @ForAll @IntRange(min = -500, max = 500) int y,
            @ForAll @IntRange(max = 359) int degrees) {
        double turn = Math.toRadians(degrees);
        double across = x / 1000.0;
        double up = y / 1000.0;
        PositionDeviation turned = new PositionDeviation(
                Nanometres.round(across * Math.cos(turn) - up * Math.sin(turn)),
                Nanometres.round(across * Math.sin(turn) + up * Math.cos(turn)));
        assertEquals(
                Nanometres.of(new PositionDeviation(micrometres(x), micrometres(y)).diameter()),
                Nanometres.of(turned.diameter()),
                3 * NANOMETRE);
    }

    /**
     * An axis read by X and Y, and the same by radius and angle, any number of turns on: never nearer, for rounding.
     */
    @Property
    void byRadiusAndAngleAnAxisLiesWhereItLiesByXAndY(
            @ForAll @IntRange(min = -90_000, max = 90_000) int trueX,
            @ForAll @IntRange(min = -90_000, max = 90_000) int trueY,
            @ForAll @IntRange(min = -500, max = 500) int offX,
            @ForAll @IntRange(min = -500, max = 500) int offY,
            @ForAll @IntRange(min = -3, max = 3) int turns) {
        double x = (trueX + offX) / 1000.0;
        double y = (trueY + offY) / 1000.0;
        PolarPlace read = new PolarPlace(
                new Length(BigDecimal.valueOf(Math.hypot(x, y))),
                Length.of(BigDecimal.valueOf(Math.toDegrees(Math.atan2(y, x)) + 360 * turns), Unit.DEGREE));
        PositionDeviation polar = read.from(micrometres(trueX), micrometres(trueY));
        PositionDeviation across = new PositionDeviation(micrometres(offX), micrometres(offY));
        double further = Nanometres.of(polar.diameter()) - Nanometres.of(across.diameter());
        assertTrue(further > -NANOMETRE / 100 && further < 3 * NANOMETRE, () -> polar + " for " + across);
    }

    /** 3, 4 and 5 make a right angle, so these lie on their zone exactly. */
    @Property
    void onTheZoneIsInside(@ForAll @IntRange(min = 1, max = 400) int fifth) {
        PositionDeviation on = new PositionDeviation(micrometres(3 * fifth), micrometres(-4 * fifth));
        Length zone = micrometres(10 * fifth);
        assertTrue(on.isWithin(zone));
        assertFalse(on.isWithin(zone.minus(new Length(new BigDecimal("1e-30")))));
        assertFalse(on.isWithin(zone.negated()));
    }

    @Property
    void aBonusIsNeverLessThanNothingNorMoreThanTheToleranceOfTheSize(
            @ForAll FeatureOfSize feature,
            @ForAll MaterialModifier modifier,
            @ForAll @IntRange(min = 9_800, max = 10_300) int size,
            @ForAll @IntRange(max = 100) int loss) {
        Length least = micrometres(10_000);
        Length greatest = micrometres(10_100);
        PositionBonus limits = new PositionBonus(feature, modifier, Optional.of(least), Optional.of(greatest));
        Length bonus = limits.at(micrometres(size), micrometres(loss));
        assertTrue(bonus.signum() >= 0);
        assertFalse(bonus.isAbove(greatest.minus(least)));
        if (modifier == MaterialModifier.NONE) {
            assertEquals(Length.ZERO, bonus);
        }
        if (limits.holds(micrometres(size)) && modifier != MaterialModifier.NONE) {
            int from = limits.countsFromLeast() ? size - 10_000 : 10_100 - size;
            assertEquals(micrometres(Math.max(0, from - loss)), bonus);
        }
    }

    @Property
    void theHolesOfACircleLieOnItAChordApart(
            @ForAll @IntRange(min = 2, max = 40) int holes, @ForAll @IntRange(min = -720, max = 720) int start) {
        BoltCircle circle =
                new BoltCircle(micrometres(100_000), holes, BigDecimal.valueOf(start), Length.ZERO, Length.ZERO);
        for (int hole = 0; hole < holes; hole++) {
            int next = (hole + 1) % holes;
            double x = Nanometres.of(circle.x().get(hole));
            double y = Nanometres.of(circle.y().get(hole));
            assertEquals(50, Math.hypot(x, y), 2 * NANOMETRE);
            assertEquals(
                    Nanometres.of(circle.chord()),
                    Math.hypot(
                            Nanometres.of(circle.x().get(next)) - x,
                            Nanometres.of(circle.y().get(next)) - y),
                    4 * NANOMETRE);
        }
    }

    @Property
    void overAndBetweenComeToOneDistance(
            @ForAll @IntRange(min = 1, max = 30_000) int first,
            @ForAll @IntRange(min = 1, max = 30_000) int second,
            @ForAll @IntRange(max = 90_000) int between) {
        Length inside = micrometres(between);
        Length outside = inside.plus(micrometres(first)).plus(micrometres(second));
        assertEquals(
                CentreDistance.between(inside, micrometres(first), micrometres(second)),
                CentreDistance.over(outside, micrometres(first), micrometres(second)));
    }
}
