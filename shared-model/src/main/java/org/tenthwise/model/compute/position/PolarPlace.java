package org.tenthwise.model.compute.position;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;

/**
 * Where an axis was read by its distance from a datum axis and its direction there, and how far that is from where it
 * should be.
 *
 * <p>x = r cos φ, y = r sin φ; each less the true coordinate.
 *
 * <p>Lengths; the angle counter-clockwise from +X when +X points right and +Y up, any number of turns more or less. A
 * coordinate is worked out to 1e-12 mm; what it is off is then rounded to 1 nm away from zero, so that no rounding
 * brings an axis into its zone.
 *
 * <p>A radius of zero lies on the axis, whatever the angle.
 *
 * <p>Source: ISO 80000-2:2019, polar coordinates, from memory.
 *
 * @param radius zero or more
 * @param angle of its direction
 */
public record PolarPlace(Length radius, Length angle) {

    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);
    private static final double HALF_TURN = 180;
    private static final int EXACT = 12;
    private static final int NANOMETRES = 6;

    /** Of the point at x and y: radius to 1e-12 mm, angle from 0 to 360 degrees as near as a {@code double} has it. */
    public static PolarPlace at(Length x, Length y) {
        double degrees = Math.toDegrees(Math.atan2(Nanometres.of(y), Nanometres.of(x)));
        BigDecimal angle = BigDecimal.valueOf(degrees);
        return new PolarPlace(
                Length.rootOfSquares(x, y), Length.of(degrees < 0 ? angle.add(FULL_TURN) : angle, Unit.DEGREE));
    }

    /** How far it is off a true place by X and Y. */
    public PositionDeviation from(Length x, Length y) {
        double direction =
                Math.toRadians(angle.in(Unit.DEGREE).remainder(FULL_TURN).doubleValue());
        return new PositionDeviation(off(Math.cos(direction), x), off(Math.sin(direction), y));
    }

    /** How far it lies to the side if its angle is off by so much; to 1 nm, rounded up. */
    public Length across(Length off) {
        double share = Math.toRadians(off.abs().in(Unit.DEGREE).doubleValue());
        return new Length(radius.millimetres()
                .multiply(BigDecimal.valueOf(share))
                .setScale(EXACT, RoundingMode.HALF_EVEN)
                .setScale(NANOMETRES, RoundingMode.UP));
    }

    /** The angle that moves it to the side by so much: the inverse of {@link #across}, half a turn at the most. */
    public Length turnedBy(Length across) {
        double degrees = Math.toDegrees(Nanometres.of(across.abs()) / Nanometres.of(radius));
        return Length.of(BigDecimal.valueOf(Math.min(HALF_TURN, degrees)), Unit.DEGREE);
    }

    private Length off(double share, Length nominal) {
        BigDecimal along =
                radius.millimetres().multiply(BigDecimal.valueOf(share)).setScale(EXACT, RoundingMode.HALF_EVEN);
        return new Length(along.subtract(nominal.millimetres()).setScale(NANOMETRES, RoundingMode.UP));
    }
}
