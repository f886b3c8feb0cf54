package org.tenthwise.model.compute.radius;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * An arc, and how sharply a gauge tells its radius.
 *
 * @param radius more than zero, to 1 nm
 * @param height from the middle of the chord to the arc; over rolls on a concave arc, from under the rolls to the arc
 * @param angle of the arc between the contacts, degrees, more than 0 and less than 360
 * @param length along the arc between the contacts, to 1 nm
 * @param sensitivity how far the radius moves for each unit by which the height, or over rolls on a plate the reading
 *     over them, is read higher; less than zero where the radius gets smaller
 */
public record Arc(Length radius, Length height, double angle, Length length, double sensitivity) {

    static Arc of(double radius, double height, double angle, double sensitivity) {
        return new Arc(
                Nanometres.round(radius),
                Nanometres.round(height),
                Math.toDegrees(angle),
                Nanometres.round(radius * angle),
                sensitivity);
    }
}
