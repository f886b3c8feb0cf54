package org.tenthwise.model.compute.gear;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The measurement over two pins in the spaces of external involute teeth, or between two in those of internal ones, and
 * the tooth thickness it is of.
 *
 * <p>With inv x = tan x − x, tooth thickness s, space e = π m − s, pin p, base diameter db, transverse pressure angle a
 * and the base helix bb:
 *
 * <pre>
 * external   inv A = inv a + s / (z m) + p / (db cos bb) − π / z
 * internal   inv A = inv a + e / (z m) − p / (db cos bb)
 * C = db / cos A                       through the centres of two pins that face each other
 * M = C ± p, z even;   M = C cos(90° / z) ± p, z odd
 * tan A' = tan A ∓ p cos bb / db       where the pin touches: on the diameter db / cos A'
 * dM/ds = db / (z m sin A), times cos(90° / z) for odd z
 * </pre>
 *
 * <p>Lengths, to 1 nm. The factor is for each unit of tooth thickness (external) or of space (internal). Helical teeth
 * in the normal section; for an odd number of them balls in one plane or a third pin, not two pins.
 *
 * <p>A pin that would lie on no involute, under the base circle or above the point in which the flanks meet, is
 * refused. Whether it touches between the form and the tip diameter the drawing has to say.
 *
 * <p>Source: Machinery's Handbook, <em>Checking gear size by measurement over wires or pins</em>; DIN 5480 and ANSI
 * B92.1 for splines.
 *
 * @param teeth what is measured
 * @param pin diameter
 * @param side which way the teeth stand
 */
public record OverPins(InvoluteTeeth teeth, Length pin, ToothSide side) {

    /**
     * Where two pins rest.
     *
     * @param measured over them, or between them
     * @param contactDiameter on which they touch
     * @param changeFactor of the measurement for each unit of tooth thickness or space
     */
    public record Rest(Length measured, Length contactDiameter, double changeFactor) {}

    private static final double QUARTER_TURN = Math.PI / 2;

    /** @throws IllegalArgumentException if the pin is not above zero */
    public OverPins {
        if (pin.signum() <= 0) {
            throw new Refused("model.over-pins.no-pin", pin);
        }
    }

    /**
     * Where the pins rest with teeth of that thickness.
     *
     * @throws IllegalArgumentException if they could not touch both flanks
     */
    public Rest rest(Length thickness) {
        double share = shareOfTurn(teeth.checked(thickness));
        double involute = Involute.of(teeth.transverseAngle()) + share;
        if (involute <= 0) {
            throw new Refused("model.over-pins.below-base", pin, base());
        }
        return restAt(Involute.angle(involute));
    }

    /**
     * The tooth thickness.
     *
     * @throws IllegalArgumentException if no teeth could be read so, or the pins could not touch both their flanks
     */
    public Length thickness(Length measured) {
        double centres = (Nanometres.of(measured) - sign() * Nanometres.of(pin)) / oddness();
        if (centres <= teeth.baseDiameter()) {
            throw new Refused("model.over-pins.too-little", measured, least());
        }
        double angle = Math.acos(teeth.baseDiameter() / centres);
        restAt(angle);
        double share = Involute.of(angle) - Involute.of(teeth.transverseAngle());
        double arc = teeth.teeth() * teeth.normalModule();
        double thickness = side == ToothSide.EXTERNAL
                ? arc * (share - pinShare()) + teeth.pitch()
                : teeth.pitch() - arc * (share + pinShare());
        if (!(thickness > 0 && thickness < teeth.pitch())) {
            throw new Refused("model.over-pins.no-teeth", measured);
        }
        return Nanometres.round(thickness);
    }

    private Rest restAt(double angle) {
        double base = teeth.baseDiameter();
        double contact = Math.tan(angle) - sign() * Nanometres.of(pin) * teeth.cosineOfBaseHelix() / base;
        if (contact < 0) {
            throw new Refused("model.over-pins.below-base", pin, base());
        }
        double measured = base / Math.cos(angle) * oddness() + sign() * Nanometres.of(pin);
        double onDiameter = base * Math.hypot(1, contact);
        if (side == ToothSide.EXTERNAL && Math.PI / teeth.teeth() <= angle - Math.atan(contact) || measured <= 0) {
            throw new Refused("model.over-pins.above-tooth", pin, Nanometres.round(onDiameter));
        }
        return new Rest(
                Nanometres.round(measured),
                Nanometres.round(onDiameter),
                base / (teeth.teeth() * teeth.normalModule() * Math.sin(angle)) * oddness());
    }

    /** By how much the involute at the centre of the pin exceeds the one at the reference circle. */
    private double shareOfTurn(double thickness) {
        double arc = teeth.teeth() * teeth.normalModule();
        return side == ToothSide.EXTERNAL
                ? pinShare() - (teeth.pitch() - thickness) / arc
                : (teeth.pitch() - thickness) / arc - pinShare();
    }

    private double pinShare() {
        return Nanometres.of(pin) / (teeth.baseDiameter() * teeth.cosineOfBaseHelix());
    }

    private int sign() {
        return side == ToothSide.EXTERNAL ? 1 : -1;
    }

    private double oddness() {
        return teeth.teeth() % 2 == 0 ? 1 : Math.cos(QUARTER_TURN / teeth.teeth());
    }

    private Length base() {
        return Nanometres.round(teeth.baseDiameter());
    }

    private Length least() {
        return Nanometres.round(teeth.baseDiameter() * oddness() + sign() * Nanometres.of(pin));
    }
}
