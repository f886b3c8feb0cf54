package org.tenthwise.model.compute.taper;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The stack of blocks under one roller of a sine bar or sine plate, and the angle it sets.
 *
 * <p>stack = L sin A; A = asin(stack / L); an error of the stack turns the angle by error / (L cos A), in radians.
 *
 * <p>Degrees; lengths to 1 nm. An error of the stack that is more than zero opens the angle.
 *
 * <p>No stack is 0°, a stack as long as the bar 90°; there the error grows beyond all bounds, and is refused.
 *
 * <p>Source: Machinery's Handbook, 31st ed., p. 695.
 *
 * @param length from the middle of one roller to the middle of the other, more than zero
 */
public record SineBar(Length length) {

    /** Beyond this the complement is better measured: common practice. */
    public static final double STEEP = 45;

    private static final BigDecimal UPRIGHT = BigDecimal.valueOf(90);

    /** @param degrees from 0 to 90 */
    public Length stack(BigDecimal degrees) {
        if (degrees.signum() < 0 || degrees.compareTo(UPRIGHT) > 0) {
            throw new Refused("model.sine-bar.angle");
        }
        return Nanometres.round(Nanometres.of(length) * Math.sin(Math.toRadians(degrees.doubleValue())));
    }

    /** @param stack not less than nothing and not more than the length of the bar */
    public double angle(Length stack) {
        if (stack.signum() < 0 || stack.isAbove(length)) {
            throw new Refused("model.sine-bar.stack");
        }
        return Math.toDegrees(Math.asin(Nanometres.of(stack) / Nanometres.of(length)));
    }

    /**
     * Degrees by which the angle is off.
     *
     * @param degrees less than 90
     */
    public double angleError(double degrees, Length stackError) {
        if (degrees >= UPRIGHT.doubleValue()) {
            throw new Refused("model.sine-bar.upright");
        }
        double along = Nanometres.of(length) * Math.cos(Math.toRadians(degrees));
        return Math.toDegrees(Nanometres.of(stackError) / along);
    }
}
