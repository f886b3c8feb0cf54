package org.tenthwise.model.compute.comparison;

import java.math.BigDecimal;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Length;

/**
 * A size found by comparison with a master.
 *
 * <p>Size = certified size of the master + sign of the gauge · (reading − reading on the master).
 *
 * <p>Exact, in the sense of the size: more than the master is more. The sign is +1 for a gauge whose number rises with
 * the size and −1 for one whose number falls.
 *
 * <p>A reading equal to the one on the master gives the certified size.
 *
 * <p>Source: common practice for comparing gauges; the certified size is used, not the nominal one, as in the
 * comparison of JCGM 100, H.1 (length of the standard plus difference).
 */
public final class FromMaster {

    private FromMaster() {}

    /**
     * @param reading on the work
     * @param zero reading on the master
     */
    public static Length size(Length certified, ReadingDirection sense, Length reading, Length zero) {
        return certified.plus(correction(sense, reading, zero));
    }

    /** How much larger than the master the work is. */
    public static Length correction(ReadingDirection sense, Length reading, Length zero) {
        return reading.minus(zero).times(BigDecimal.valueOf(sense.sign()));
    }
}
