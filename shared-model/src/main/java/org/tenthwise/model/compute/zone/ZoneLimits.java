package org.tenthwise.model.compute.zone;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * What a zone comes to at a size.
 *
 * @param nominal the size the zone stands behind
 * @param upper deviation from it, not below {@code lower}
 * @param lower deviation from it
 */
public record ZoneLimits(Length nominal, Length upper, Length lower) {

    public ZoneLimits {
        if (upper.isBelow(lower)) {
            throw new Refused("model.zone-limits.upper-deviation", upper, lower);
        }
    }

    public Length greatest() {
        return nominal.plus(upper);
    }

    public Length least() {
        return nominal.plus(lower);
    }

    public Length width() {
        return upper.minus(lower);
    }
}
