package org.tenthwise.model.compute.taper;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;

/**
 * How far the tailstock is set over for a taper turned between centres.
 *
 * <p>Taper on diameter for each unit of length · length of the work between the centres / 2: the whole length of the
 * work counts, not that of the taper.
 *
 * <p>A length to 1e-12 mm; towards the tool for a taper that is small at the tailstock.
 *
 * <p>No taper would be no offset.
 *
 * <p>Source: Jones, Turning and Boring, taper turning: 1 in to the foot on 9 in is 3/8 in.
 */
public final class TailstockOffset {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal TWICE_INCHES_PER_FOOT = BigDecimal.valueOf(24);

    private TailstockOffset() {}

    /** @param perUnit on diameter for each unit of length */
    public static Length forPerUnit(BigDecimal perUnit, Length work) {
        return work.times(perUnit).dividedBy(TWO);
    }

    /** @param perFoot inches on diameter to the foot */
    public static Length forPerFoot(BigDecimal perFoot, Length work) {
        return work.times(perFoot).dividedBy(TWICE_INCHES_PER_FOOT);
    }
}
