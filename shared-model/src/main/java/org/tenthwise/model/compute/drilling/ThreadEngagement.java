package org.tenthwise.model.compute.drilling;

import java.math.BigDecimal;
import java.math.MathContext;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * How much thread a drilled hole leaves for the tap, in per cent of a full one.
 *
 * <p>(major − drill) / (1.299 · pitch) · 100.
 *
 * <p>Zero where the drill is as large as the thread. Above 100 the tap would cut on its root.
 *
 * <p>A full thread is taken as 1.299 pitches on diameter, as tap drill tables have it; on the basis of 1.0825 pitches,
 * the basic thread of ISO 68-1, the same hole has a fifth more. Neither is a limit of the minor diameter.
 *
 * <p>Source: common practice; Machinery's Handbook, tap drill sizes (from memory).
 */
public final class ThreadEngagement {

    private static final BigDecimal FULL_DEPTH = new BigDecimal("1.299");

    private ThreadEngagement() {}

    /** @throws IllegalArgumentException if a size is zero or less, or the drill larger than the thread */
    public static BigDecimal percent(Length major, Length drill, Length pitch) {
        if (drill.signum() <= 0 || drill.isAbove(major)) {
            throw new Refused("model.thread-engagement.drill", drill, major);
        }
        if (pitch.signum() <= 0) {
            throw new Refused("model.thread-engagement.pitch", pitch);
        }
        BigDecimal full = pitch.times(FULL_DEPTH).millimetres();
        return major.minus(drill).millimetres().movePointRight(2).divide(full, MathContext.DECIMAL64);
    }
}
