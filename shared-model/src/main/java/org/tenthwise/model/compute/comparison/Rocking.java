package org.tenthwise.model.compute.comparison;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * How much too large a two-point bore gauge reads when it is tilted along the axis of the bore.
 *
 * <p>Too large by D · (1/cos(tilt) − 1), worked as D · 2 sin²(tilt/2) / cos(tilt), which loses nothing at small tilts.
 *
 * <p>A length to 1 nm, zero or more; to be taken off the reading.
 *
 * <p>No tilt gives zero. It grows with the square of the tilt: at 1° it is 0.015 % of the bore.
 *
 * <p>Source: geometry; <em>common practice</em> is to rock the gauge through square and to read where the needle turns
 * back, which takes it away: it is the least size, on whichever side the numbers of the gauge grow.
 */
public final class Rocking {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    private Rocking() {}

    /** @throws IllegalArgumentException for a bore of nothing, or unless the tilt is 0° or more and less than 90° */
    public static Length readsMore(Length diameter, BigDecimal tiltDegrees) {
        if (diameter.signum() <= 0) {
            throw new Refused("model.rocking.diameter-bore", diameter);
        }
        if (tiltDegrees.signum() < 0 || tiltDegrees.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.rocking.tilt-degrees", tiltDegrees.toPlainString());
        }
        double tilt = Math.toRadians(tiltDegrees.doubleValue());
        double sine = Math.sin(tilt / 2);
        return Nanometres.round(Nanometres.of(diameter) * 2 * sine * sine / Math.cos(tilt));
    }
}
