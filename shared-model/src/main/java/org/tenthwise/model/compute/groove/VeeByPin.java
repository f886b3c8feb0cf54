package org.tenthwise.model.compute.groove;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The width of a vee groove at its face, from how far a pin that lies in it stands out.
 *
 * <p>With h half the angle of the groove, r the radius of the pin and q the height of its top above the face: width = 2
 * tan h (r + r / sin h − q). The pin touches r (1 + sin h) below its top, 2 r cos h apart.
 *
 * <p>A length, to 1 nm; q is less than zero for a pin below the face. A width larger by 2 tan h for each unit less of
 * q: 2 for 90°.
 *
 * <p>A pin that touches above the face lies on the edges, and is refused.
 *
 * <p>Source: geometry of a circle that touches two lines; common practice.
 *
 * @param angle of the groove from flank to flank, degrees, more than 0 and less than 180
 * @param pin its diameter
 */
public record VeeByPin(BigDecimal angle, Length pin) {

    private static final BigDecimal FLAT = BigDecimal.valueOf(180);

    /** @throws IllegalArgumentException if there is no such groove or pin */
    public VeeByPin {
        if (angle.signum() <= 0 || angle.compareTo(FLAT) >= 0) {
            throw new Refused("model.vee.angle", angle.toPlainString());
        }
        if (pin.signum() <= 0) {
            throw new Refused("model.vee.pin", pin);
        }
    }

    /**
     * @param above from the face to the top of the pin
     * @throws IllegalArgumentException if the pin touches the edges and not the flanks
     */
    public Length width(Length above) {
        Length touching = Nanometres.round(radius() * (1 + Math.sin(half())));
        if (!above.isBelow(touching)) {
            throw new Refused("model.vee.on-the-edges", pin, above);
        }
        return Nanometres.round(2 * Math.tan(half()) * (sharp() - Nanometres.of(above)));
    }

    /** How far the pin stands out of a groove of that width. */
    public Length above(Length width) {
        return Nanometres.round(sharp() - Nanometres.of(width) / 2 / Math.tan(half()));
    }

    /** From the sharp root to the top of the pin. */
    private double sharp() {
        return radius() + radius() / Math.sin(half());
    }

    private double radius() {
        return Nanometres.of(pin) / 2;
    }

    private double half() {
        return Math.toRadians(angle.doubleValue()) / 2;
    }
}
