package org.tenthwise.model.compute.drilling;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * How far the point of a drill goes beyond its full diameter.
 *
 * <p>D / (2 tan(angle / 2)).
 *
 * <p>A length along the axis, to 1 nm, zero or more. With 118° it is 0.30 of the diameter, with 90° half of it.
 *
 * <p>A point of 180° is flat and has no length.
 *
 * <p>Source: geometry of a cone; web thinning and rounded corners are left out.
 */
public final class DrillPoint {

    private static final BigDecimal FLAT = BigDecimal.valueOf(180);

    private DrillPoint() {}

    /**
     * @param pointAngle degrees from edge to edge, more than 0 and not more than 180
     * @throws IllegalArgumentException if there is no such drill
     */
    public static Length length(Length diameter, BigDecimal pointAngle) {
        if (diameter.signum() <= 0) {
            throw new Refused("model.drill-point.drill-none", diameter);
        }
        if (pointAngle.signum() <= 0 || pointAngle.compareTo(FLAT) > 0) {
            throw new Refused("model.drill-point.point-angle", pointAngle.toPlainString());
        }
        return Nanometres.round(Nanometres.of(diameter) / 2 / Math.tan(Math.toRadians(pointAngle.doubleValue()) / 2));
    }
}
