package org.tenthwise.model.compute.temperature;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;

/**
 * The size at 20 °C of a part that was read with a gauge, both away from 20 °C.
 *
 * <p>L20 = m · [1 + αg·(tg − 20)] / [1 + αp·(tp − 20)], where m is what the gauge reads, or the certified size of the
 * master it was compared with and the difference.
 *
 * <p>Exact but for the quotient, which is kept to 1e-12 mm. The correction is L20 − m: less than zero where the part
 * has grown more than the gauge.
 *
 * <p>Where gauge and part have grown by the same, as with one material at one temperature, L20 is m and the correction
 * zero, whatever the temperature. A gauge at 20 °C leaves the correction of a true length, m / [1 + αp·(tp − 20)].
 *
 * <p>Source: ISO 1 (reference temperature); JCGM 100:2008, H.1.2, whose model of a comparison this is, solved for the
 * size of the part at 20 °C. The closed form is taken, not the first-order one: they part by nearly 1 µm in a metre of
 * aluminium at 60 °C.
 *
 * @param part expansion of the part
 * @param partAt temperature of the part as it was read
 * @param gauge expansion of the gauge or of its master
 * @param gaugeAt temperature of the gauge or of its master as it was read
 */
public record AtTwenty(Expansion part, Celsius partAt, Expansion gauge, Celsius gaugeAt) {

    public Length size(Length read) {
        BigDecimal partHasGrown = part.growth(partAt);
        BigDecimal gaugeHasGrown = gauge.growth(gaugeAt);
        return partHasGrown.compareTo(gaugeHasGrown) == 0
                ? read
                : read.times(gaugeHasGrown).dividedBy(partHasGrown);
    }

    /** What is added to {@code read} to have the size at 20 °C. */
    public Length correction(Length read) {
        return size(read).minus(read);
    }
}
