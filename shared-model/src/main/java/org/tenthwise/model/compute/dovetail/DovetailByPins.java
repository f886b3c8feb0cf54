package org.tenthwise.model.compute.dovetail;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * A dovetail and the measurement by two equal pins in its sharp corners.
 *
 * <p>With the angle a between flank and base and pins of diameter p: over the pins of a male one w + p (1 + cot(a/2)),
 * between the pins of a female one w − p (1 + cot(a/2)). The width w is the one between the corners in which the pins
 * sit: the narrow base of the male, the wide floor of the female. The other width, a height h away, is wider (male) or
 * narrower (female) by 2 h · cot a. A pin touches the flank p/2 (1 + cos a) above its corner.
 *
 * <p>Lengths, to 1 nm; the angle in degrees, more than 0 and less than 90.
 *
 * <p>A rounded corner or burr under a pin falsifies the reading: the corner is to be relieved. A degree of error in an
 * angle of 60° moves the reading over pins of 10 by 0.35.
 *
 * <p>Source: Machinery's Handbook, <em>Dimensions of dovetail slides</em>: x = D (1 + cot(a/2)) + a; common practice.
 *
 * @param angle between flank and base
 * @param pin its diameter
 * @param side of the dovetail
 */
public record DovetailByPins(BigDecimal angle, Length pin, DovetailSide side) {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    /** @throws IllegalArgumentException if there is no such dovetail or pin */
    public DovetailByPins {
        if (angle.signum() <= 0 || angle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.dovetail.angle", angle.toPlainString());
        }
        if (pin.signum() <= 0) {
            throw new Refused("model.dovetail.pin", pin);
        }
    }

    /**
     * What is read over or between the pins.
     *
     * @throws IllegalArgumentException if the pins have no room beside each other
     */
    public Length measured(Length width) {
        Length measured = side == DovetailSide.MALE ? width.plus(byPins()) : width.minus(byPins());
        if (measured.signum() <= 0) {
            throw new Refused("model.dovetail.no-room", width, pin);
        }
        return Nanometres.round(measured);
    }

    /**
     * The width between the corners.
     *
     * @throws IllegalArgumentException if so little over the pins leaves no width
     */
    public Length width(Length measured) {
        Length width = side == DovetailSide.MALE ? measured.minus(byPins()) : measured.plus(byPins());
        if (width.signum() <= 0) {
            throw new Refused("model.dovetail.no-width", measured, pin);
        }
        return Nanometres.round(width);
    }

    /**
     * The width at the other end of the flanks.
     *
     * @throws IllegalArgumentException if the pins stand out over a flank of that height, or the flanks meet below it
     */
    public Length otherWidth(Length width, Length height) {
        Length contact = contactHeight();
        if (!contact.isBelow(height)) {
            throw new Refused("model.dovetail.pin-above-flank", pin, contact, height);
        }
        Length both = Nanometres.round(2 * Nanometres.of(height) / Math.tan(radians()));
        Length other = side == DovetailSide.MALE ? width.plus(both) : width.minus(both);
        if (other.signum() <= 0) {
            throw new Refused("model.dovetail.closed", height, width);
        }
        return other;
    }

    /** How high above its corner a pin touches the flank. */
    public Length contactHeight() {
        return Nanometres.round(Nanometres.of(pin) / 2 * (1 + Math.cos(radians())));
    }

    private Length byPins() {
        return Nanometres.round(Nanometres.of(pin) * (1 + 1 / Math.tan(radians() / 2)));
    }

    private double radians() {
        return Math.toRadians(angle.doubleValue());
    }
}
