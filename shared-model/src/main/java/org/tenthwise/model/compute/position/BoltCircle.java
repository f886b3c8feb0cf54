package org.tenthwise.model.compute.position;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The places of holes evenly spaced on a circle.
 *
 * <p>Hole k of n: x = xc + D/2 cos(s + 360 (k − 1) / n), y = yc + D/2 sin(s + 360 (k − 1) / n); from one hole to the
 * next D sin(180 / n).
 *
 * <p>Lengths to 1 nm; angles in degrees, counter-clockwise from the direction of +X when +X points right and +Y up.
 *
 * <p>Two holes lie opposite each other; there is no circle of fewer.
 *
 * <p>Source: Machinery's Handbook, 31st ed., pp. 709 to 711, for holes by coordinates; chord: geometry of a regular
 * polygon.
 *
 * @param diameter of the circle through the middles of the holes, more than zero
 * @param holes two or more
 * @param start degrees to hole 1
 */
public record BoltCircle(Length diameter, int holes, BigDecimal start, Length centreX, Length centreY) {

    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

    public BoltCircle {
        if (diameter.signum() <= 0) {
            throw new Refused("model.bolt-circle.no-circle");
        }
        if (holes < 2) {
            throw new Refused("model.bolt-circle.too-few-holes");
        }
    }

    /** Of each hole from the first. */
    public List<Length> x() {
        return IntStream.range(0, holes)
                .mapToObj(hole -> centreX.plus(Nanometres.round(radius() * Math.cos(direction(hole)))))
                .toList();
    }

    /** Of each hole from the first. */
    public List<Length> y() {
        return IntStream.range(0, holes)
                .mapToObj(hole -> centreY.plus(Nanometres.round(radius() * Math.sin(direction(hole)))))
                .toList();
    }

    /** From one hole to the next, middle to middle. */
    public Length chord() {
        return Nanometres.round(Nanometres.of(diameter) * Math.sin(Math.PI / holes));
    }

    private double radius() {
        return Nanometres.of(diameter) / 2;
    }

    private double direction(int hole) {
        return Math.toRadians(start.remainder(FULL_TURN).doubleValue() + 360.0 * hole / holes);
    }
}
