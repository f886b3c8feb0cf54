package org.tenthwise.model.compute.comparison;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * What a lever indicator ought to have read, its lever standing at an angle to the surface.
 *
 * <p>True reading = reading · cos(angle), the angle between the lever and the surface, or between the way the tip moves
 * and the way the work moves.
 *
 * <p>A length to 1 nm, with the sign of the reading and never larger.
 *
 * <p>At 0° the reading is true. At 10° it is 1.5 % too large, at 30° 15 %.
 *
 * <p>Source: geometry of a ball tip on a lever; Mitutoyo, catalogue 2019, Quick guide to dial test indicators, prints
 * its factors rounded to two figures; the exact cosine is used. It does not hold for pear-shaped tips, which correct
 * themselves, nor for a lever whose scale was made for an angle of its own.
 */
public final class LeverIndicator {

    private static final BigDecimal STEEP_ABOVE = BigDecimal.valueOf(30);
    private static final BigDecimal SMALL_BELOW = BigDecimal.valueOf(10);
    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    private LeverIndicator() {}

    /** @throws IllegalArgumentException unless the angle is 0° or more and less than 90° */
    public static Length trueReading(Length reading, BigDecimal angleDegrees) {
        if (angleDegrees.signum() < 0 || angleDegrees.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.lever-indicator.angle-lever", angleDegrees.toPlainString());
        }
        return Nanometres.round(Nanometres.of(reading) * Math.cos(Math.toRadians(angleDegrees.doubleValue())));
    }

    /** Above 30° the angle can no longer be judged well enough by eye for the correction to be trusted. */
    public static boolean isSteep(BigDecimal angleDegrees) {
        return angleDegrees.compareTo(STEEP_ABOVE) > 0;
    }

    /** Below 10° the correction is less than 1.6 % of the reading. */
    public static boolean hardlyMatters(BigDecimal angleDegrees) {
        return angleDegrees.compareTo(SMALL_BELOW) < 0;
    }
}
