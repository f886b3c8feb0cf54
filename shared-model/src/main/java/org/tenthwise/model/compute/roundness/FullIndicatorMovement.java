package org.tenthwise.model.compute.roundness;

import java.util.Collection;
import org.tenthwise.model.quantity.Length;

/**
 * How far an indicator swings while the work turns once.
 *
 * <p>Greatest reading less least reading.
 *
 * <p>Zero or more. One reading, or equal readings, give zero. Readings at a few places of the turn can miss the highest
 * and the lowest, never overstate them.
 *
 * <p>Source: ISO 1101, circular run-out (the line lies between two circles on the datum axis whose radii differ by the
 * tolerance); ASME Y14.5 calls the same swing the full indicator movement.
 */
public final class FullIndicatorMovement {

    private FullIndicatorMovement() {}

    /** @throws java.util.NoSuchElementException if there are no readings */
    public static Length of(Collection<Length> readings) {
        return Length.greatest(readings).minus(Length.least(readings));
    }
}
