package org.tenthwise.model.compute.taper;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * An outside taper that stands on a plate, measured over two equal rollers lying on the plate, and again with both
 * rollers on blocks of equal height.
 *
 * <p>tan h = |high − low| / (2 · height), with h half the angle of the whole cone. The diameter at the plate, with
 * rollers of diameter p: small end down low − p (1 + sec h + tan h), large end down low − p (1 + sec h − tan h).
 *
 * <p>Angles in degrees; a length to 1 nm. The diameter is that of the sharp cone at the plate: a chamfer or a radius at
 * the end is not in it.
 *
 * <p>Equal readings are no taper, and are refused.
 *
 * <p>Source: geometry of a circle that touches two lines; common practice.
 *
 * @param low over the rollers on the plate
 * @param high over the rollers on the blocks
 * @param height of the blocks, more than zero
 */
public record TaperOverRollers(Length low, Length high, Length height) {

    public TaperOverRollers {
        if (low.equals(high)) {
            throw new Refused("model.taper-over-rollers.alike");
        }
    }

    /** Whether the small end stands on the plate, for then it gets wider upwards. */
    public boolean smallEndDown() {
        return high.isAbove(low);
    }

    public Taper taper() {
        return Taper.ofRatio(high.minus(low).abs().millimetres(), height.millimetres());
    }

    /** Degrees by which the angle of the whole cone is off where one reading is off by {@code slip}, a small length. */
    public double turnsBy(Length slip) {
        double tangent = taper().tangent();
        return Math.toDegrees(Nanometres.of(slip) / Nanometres.of(height) / (1 + tangent * tangent));
    }

    /**
     * The diameter where the taper stands on the plate: its small one, or its large one where that end is down.
     *
     * @param roller diameter of each roller
     * @throws IllegalArgumentException if nothing is left between such rollers
     */
    public Length atThePlate(Length roller) {
        double tangent = taper().tangent();
        double secant = Math.hypot(1, tangent);
        double across = 1 + secant + (smallEndDown() ? tangent : -tangent);
        Length diameter = Nanometres.round(Nanometres.of(low) - Nanometres.of(roller) * across);
        if (diameter.signum() <= 0) {
            throw new Refused("model.taper-over-rollers.nothing-left");
        }
        return diameter;
    }
}
