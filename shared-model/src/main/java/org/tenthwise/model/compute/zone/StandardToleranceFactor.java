package org.tenthwise.model.compute.zone;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * The factor the standard tolerances of a step were worked out from: IT5 to IT11 are 7, 10, 16, 25, 40, 64 and 100 of
 * it, rounded.
 *
 * <p>i = 0.45 · ∛D + 0.001 · D in micrometres, D the geometric mean of the ends of the step in millimetres.
 *
 * <p>A length of more than zero, to 1 nm.
 *
 * <p>The first step counts as 1 to 3 mm.
 *
 * <p>Source: ISO 286-1, basis of the system, for sizes to 500 mm. To explain the table and to check it; what a drawing
 * means is in {@link StandardTolerance}.
 */
public final class StandardToleranceFactor {

    private static final double PER_MICROMETRE = 1e-3;

    private StandardToleranceFactor() {}

    public static Length at(Length nominal) {
        double over = Math.max(1, Nanometres.of(StandardTolerance.stepOver(nominal)));
        double mean = Math.sqrt(over * Nanometres.of(StandardTolerance.stepUpTo(nominal)));
        return Nanometres.round((0.45 * Math.cbrt(mean) + 0.001 * mean) * PER_MICROMETRE);
    }
}
