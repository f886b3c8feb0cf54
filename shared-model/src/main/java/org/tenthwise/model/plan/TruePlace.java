package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.compute.position.PolarPlace;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * Where the drawing puts the axis of a hole or a pin, by basic dimensions.
 *
 * @param name which of several; absent where there is one alone
 * @param x from the datum, along the first direction of the drawing's frame; any sign
 * @param y along the direction square to it
 */
public record TruePlace(Optional<String> name, Written x, Written y) {

    private static final int PLACES = 4;

    /** Whether it lies on the datum axis, so that it has no direction from there. */
    public boolean isOnTheAxis() {
        return x.length().signum() == 0 && y.length().signum() == 0;
    }

    /** How far it lies from the datum axis, to be read by a person: to four places; judged are x and y. */
    public Written radius() {
        return written(polar().radius().in(x.unit()), x.unit());
    }

    /** In which direction, from 0 to 360 degrees counter-clockwise from +X; to four places, as the radius. */
    public Written direction() {
        return written(polar().angle().in(Unit.DEGREE), Unit.DEGREE);
    }

    private PolarPlace polar() {
        return PolarPlace.at(x.length(), y.length());
    }

    private static Written written(BigDecimal figure, Unit unit) {
        BigDecimal rounded = figure.setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return Written.of(rounded.scale() < 0 ? rounded.setScale(0) : rounded, unit);
    }
}
