package org.tenthwise.model.compute.fit;

import java.util.Collection;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The play between a plug and a bore, at its most and at its least.
 *
 * <p>Greatest = greatest bore − least plug. Least = least bore − greatest plug.
 *
 * <p>Exact, on diameter. Less than zero is interference.
 *
 * <p>One size of each gives the same greatest and least. The sizes may be limits or readings.
 *
 * <p>Source: ISO 286-1, limits of fits. Size for size counts as the extreme case of a clearance fit where it is the
 * least, and of an interference fit where it is the greatest, as the standard has it.
 *
 * @param greatest not below {@code least}
 */
public record Clearance(Length greatest, Length least) {

    public Clearance {
        if (greatest.isBelow(least)) {
            throw new Refused("model.clearance.greatest-clearance", greatest, least);
        }
    }

    /** @throws java.util.NoSuchElementException if there are no bores or no plugs */
    public static Clearance of(Collection<Length> bores, Collection<Length> plugs) {
        return new Clearance(
                Length.greatest(bores).minus(Length.least(plugs)),
                Length.least(bores).minus(Length.greatest(plugs)));
    }

    /** Zero at both ends is a clearance fit. */
    public FitKind kind() {
        if (least.signum() >= 0) {
            return FitKind.CLEARANCE;
        }
        return greatest.signum() <= 0 ? FitKind.INTERFERENCE : FitKind.TRANSITION;
    }
}
