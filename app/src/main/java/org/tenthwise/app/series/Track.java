package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One figure of each part of a segment, and what they show together.
 *
 * @param side which figure it is
 * @param places of the parts in the segment, from 1, in their order; parts that are still to be cut are none
 * @param figures as many, in the unit of the limits
 * @param lower limit it is held against; absent where it is not
 * @param upper limit it is held against; absent where it is not
 * @param coarse too few different figures to tell a spread from the steps of the gauge
 * @param level all alike
 * @param mean absent below three parts
 * @param limits absent below ten parts, and where the figures are coarse or level
 */
public record Track(
        Side side,
        List<Integer> places,
        List<BigDecimal> figures,
        Optional<BigDecimal> lower,
        Optional<BigDecimal> upper,
        boolean coarse,
        boolean level,
        Optional<Mean> mean,
        Drift drift,
        Optional<ControlLimits> limits,
        CapabilityShown capability) {

    /** Which figure of a part it is. */
    public enum Side {
        /** The one size that is judged. */
        ONE,
        /** The least of several, held against the lower limit. */
        LEAST,
        /** The greatest of several, held against the upper limit. */
        GREATEST
    }

    public Track {
        places = List.copyOf(places);
        figures = List.copyOf(figures);
    }

    /** How many parts. */
    public int n() {
        return figures.size();
    }

    /** Whether they drift or jump, so that parts to come are not like these. */
    public boolean drifts() {
        return drift.shown() == Drift.Shown.SHOWN || capability.standing() == CapabilityShown.Standing.DRIFTING;
    }
}
