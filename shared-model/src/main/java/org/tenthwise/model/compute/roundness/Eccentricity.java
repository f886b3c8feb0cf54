package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * How far the middle of the work stands off the axis of the spindle, and to which side, in one section.
 *
 * <p>Amount = √(cosPart² + sinPart²); towards an angle t = cosPart · cos t + sinPart · sin t, which is half the
 * difference of the readings at t and opposite.
 *
 * <p>Lengths to 1 nm; more than zero is further out. Towards two opposite angles it is one figure with two signs,
 * whichever way the last nanometre rounds.
 *
 * <p>Work that runs true has the amount zero, and stands high at 0°.
 *
 * <p>Source: components of a vector; half the difference of opposite readings is common practice.
 *
 * @param cosPart part towards 0°
 * @param sinPart part towards 90°
 */
public record Eccentricity(Length cosPart, Length sinPart) {

    private static final int PLACES_OF_A_DEGREE = 6;

    public Length amount() {
        return Nanometres.round(Math.hypot(Nanometres.of(cosPart), Nanometres.of(sinPart)));
    }

    /** From 0 to less than 360, to 1e-6 degree. */
    public BigDecimal highAtDegrees() {
        return direction(Nanometres.of(cosPart), Nanometres.of(sinPart));
    }

    static BigDecimal direction(double cosPart, double sinPart) {
        return Angle.inOneTurn(BigDecimal.valueOf(Math.toDegrees(Math.atan2(sinPart, cosPart)))
                .setScale(PLACES_OF_A_DEGREE, RoundingMode.HALF_EVEN));
    }

    /**
     * The part of it towards an angle: how far a needle held there falls when the work goes to the middle along that
     * line.
     */
    public Length towards(BigDecimal degrees) {
        BigDecimal place = Angle.inOneTurn(degrees);
        return place.compareTo(Angle.HALF_TURN) < 0
                ? Nanometres.round(component(place))
                : Nanometres.round(component(place.subtract(Angle.HALF_TURN))).negated();
    }

    /** Unrounded, for sums that go on from it. */
    double component(BigDecimal degrees) {
        double angle = Angle.radians(degrees);
        return Nanometres.of(cosPart) * Math.cos(angle) + Nanometres.of(sinPart) * Math.sin(angle);
    }

    public Eccentricity minus(Eccentricity other) {
        return new Eccentricity(cosPart.minus(other.cosPart), sinPart.minus(other.sinPart));
    }

    public Eccentricity halfWayTo(Eccentricity other) {
        return new Eccentricity(
                Nanometres.round(cosPart.plus(other.cosPart).half()),
                Nanometres.round(sinPart.plus(other.sinPart).half()));
    }
}
