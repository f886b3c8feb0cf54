package org.tenthwise.model.compute.comparison;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * How far a comparing gauge's zero has gone between reading the master before and after the work.
 *
 * <p>Drift = reading on the master afterwards less the one before.
 *
 * <p>Exact, in the sense of the gauge's number.
 *
 * <p>Equal readings give zero. A drift of one division is within what can be read and is let stand; more means that the
 * work is read again.
 *
 * <p>Source: <em>common practice</em> in comparison with a master: close the measurement on the master it was opened
 * on.
 *
 * @param readAgain whether the drift is more than one division
 */
public record ZeroDrift(Length drift, boolean readAgain) {

    /** @throws IllegalArgumentException unless the division is more than zero */
    public static ZeroDrift between(Length before, Length after, Length division) {
        if (division.signum() <= 0) {
            throw new Refused("model.zero-drift.division-more", division);
        }
        Length drift = after.minus(before);
        return new ZeroDrift(drift, drift.abs().isAbove(division));
    }
}
