package org.tenthwise.model.compute.roundness;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * How much of the movement no moving of the work takes away.
 *
 * <p>The greater of: what the fitted circle leaves of the readings, greatest less least; and movement over a full turn
 * − 2 · eccentricity.
 *
 * <p>Zero or more, to 1 nm. The second part finds what lies between the readings, a burr or a chip: moving the work by
 * its eccentricity takes no more than twice that off the movement.
 *
 * <p>Three readings leave nothing of the first part. Without a full turn there is no second part.
 *
 * <p>Source: readings = eccentric circle + what is left, {@link CircleFit}; that the range of a sum is no more than the
 * sum of the ranges gives the second part.
 */
public final class FormLeft {

    private FormLeft() {}

    /** @param swept movement over a full turn, where it was read */
    public static Length of(CircleFit fit, Optional<Length> swept) {
        return Length.greatest(List.of(
                fit.residual(),
                swept.map(movement -> movement.minus(fit.eccentricRunOut())).orElse(Length.ZERO)));
    }
}
