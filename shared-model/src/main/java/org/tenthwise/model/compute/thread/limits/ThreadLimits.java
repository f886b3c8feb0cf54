package org.tenthwise.model.compute.thread.limits;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.words.Refused;

/**
 * Limits of size of one side of a thread, to the places the standard prints: 0.001 mm or 0.0001 in. What the standard
 * does not limit is absent.
 *
 * @param allowance deviation of the pitch diameter from its basic size at the most metal, zero or more
 * @param unit of the standard
 */
public record ThreadLimits(
        Optional<Length> majorMax,
        Optional<Length> majorMin,
        Length pitchMax,
        Length pitchMin,
        Optional<Length> minorMax,
        Optional<Length> minorMin,
        Length allowance,
        Unit unit,
        LimitsBasis standing,
        List<LimitsRemark> remarks) {

    /**
     * @throws IllegalArgumentException if a least limit is not above zero: the thread is too coarse for its diameter
     */
    public ThreadLimits {
        remarks = List.copyOf(remarks);
        requireCore(pitchMin);
        minorMax.ifPresent(ThreadLimits::requireCore);
        minorMin.ifPresent(ThreadLimits::requireCore);
    }

    /**
     * The limits of a thread by the standard of its form.
     *
     * @throws IllegalArgumentException if the side is not known or the standard has no figures for such a thread
     */
    public static ThreadLimits of(ThreadDesignation designation) {
        ThreadSide side = designation
                .side()
                .orElseThrow(() -> new Refused("model.thread-limits.side-missing", designation.threadClass()));
        return switch (designation.thread().form()) {
            case UNIFIED -> new UnifiedLimits(designation).on(side);
            case METRIC -> new MetricLimits(designation).on(side);
            case ACME, STUB_ACME -> new AcmeLimits(designation).on(side);
            case TRAPEZOIDAL -> new TrapezoidalLimits(designation).on(side);
        };
    }

    /** Greatest less least; absent where the standard has not both. */
    public Optional<Length> majorTolerance() {
        return majorMax.flatMap(most -> majorMin.map(most::minus));
    }

    public Length pitchTolerance() {
        return pitchMax.minus(pitchMin);
    }

    /** Greatest less least; absent where the standard has not both. */
    public Optional<Length> minorTolerance() {
        return minorMax.flatMap(most -> minorMin.map(most::minus));
    }

    /** Places the standard prints in its own unit. */
    public int places() {
        return unit == Unit.INCH ? Rounded.PLACES_OF_AN_INCH : Rounded.PLACES_OF_A_MILLIMETRE;
    }

    private static void requireCore(Length limit) {
        if (limit.signum() <= 0) {
            throw new Refused("model.thread-limits.pitch-too");
        }
    }
}
