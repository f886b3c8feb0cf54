package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * How the axis of the work lies beside the axis of the spindle, from the circles fitted in two sections.
 *
 * <p>e(z) = e1 + (e2 − e1) · (z − z1) / (z2 − z1), as vectors. Shift = e1, at the near section. Lean = e2 − e1, what
 * the far section stands off beyond the near one. Coaxial error = 2 · the greatest amount of e(z) from z1 to z2: the
 * diameter of the zone about the axis of the spindle in which the axis of the work lies. As e(z) runs straight, the
 * greatest is at one of the two sections.
 *
 * <p>Lengths to 1 nm; z is the distance from the jaws. Nothing is said of the work beyond the two sections.
 *
 * <p>Equal eccentricities have no lean: the work is shifted and nothing else. Two true sections have a coaxial error of
 * zero. Two sections at one place are refused.
 *
 * <p>Source: a straight line through two points, first-order geometry, for work that is straight and stiff; coaxiality
 * as the diameter of a cylinder about the datum axis: ISO 1101:2017, coaxiality (from memory).
 *
 * @param nearAt z1, nearer the jaws
 * @param farAt z2
 */
public record ShiftAndTilt(Length nearAt, Eccentricity near, Length farAt, Eccentricity far) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** @throws IllegalArgumentException if the near section is not nearer than the far one */
    public ShiftAndTilt {
        if (!farAt.isAbove(nearAt)) {
            throw new Refused("model.shift-and-tilt.sections-do", nearAt, farAt);
        }
    }

    public Eccentricity lean() {
        return far.minus(near);
    }

    public Length coaxialError() {
        return Length.greatest(List.of(near.amount(), far.amount())).times(TWO);
    }
}
