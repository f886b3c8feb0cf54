package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.tenthwise.model.words.Refused;

/**
 * How far on the way from the middle of the tolerance to a limit a reading lies.
 *
 * <p>(reading − middle) / (half the tolerance), the middle half way between the limits.
 *
 * <p>A plain number: 0 in the middle, 1 on the upper limit, −1 on the lower; exact to twenty figures.
 *
 * <p>Needs no second reading. On a limit it is 1 or −1 exactly. The middle stands in for the nominal size, which for a
 * one-sided fit lies on a limit.
 *
 * <p>Source: common practice for charts of short runs of several sizes, as with D. C. Montgomery, Introduction to
 * Statistical Quality Control, ch. 10, deviation from nominal; the tolerance in place of the spread, which few parts do
 * not show.
 */
public final class ToleranceUsed {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private ToleranceUsed() {}

    /** @throws IllegalArgumentException if the lower limit is not below the upper */
    public static BigDecimal of(BigDecimal reading, BigDecimal lower, BigDecimal upper) {
        if (lower.compareTo(upper) >= 0) {
            throw new Refused("model.tolerance-used.lower-upper", lower.toPlainString(), upper.toPlainString());
        }
        return Precision.quotient(reading.multiply(TWO).subtract(lower).subtract(upper), upper.subtract(lower));
    }

    /** Without its sign, of the reading that lies furthest from the middle; {@code readings} has one or more. */
    public static BigDecimal byFurthest(List<BigDecimal> readings, BigDecimal lower, BigDecimal upper) {
        return of(Collections.min(readings), lower, upper)
                .abs()
                .max(of(Collections.max(readings), lower, upper).abs());
    }
}
