package org.tenthwise.model.compute.gear;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * Involute teeth of a gear or a spline, by the figures of their reference profile.
 *
 * <p>With z teeth, module m and pressure angle a in the normal section and helix b: tan a_t = tan a / cos b, reference
 * diameter d = z m / cos b, base diameter d cos a_t, tooth thickness along the reference circle in the normal section s
 * = m (π/2 + 2 x tan a) with profile shift x. Module = 25.4 mm / diametral pitch.
 *
 * <p>Lengths to 1 nm, angles in degrees. A shift above zero makes the tooth thicker, of a gear with inside teeth too
 * (there some books count the other way).
 *
 * <p>Spur teeth and splines have no helix.
 *
 * <p>Source: ISO 21771:2007.
 *
 * @param teeth three or more
 * @param module normal, more than zero
 * @param pressureAngle normal, more than 0 and less than 90
 * @param helix at the reference circle, 0 or more and less than 90
 */
public record InvoluteTeeth(int teeth, Length module, BigDecimal pressureAngle, BigDecimal helix) {

    private static final int FEWEST = 3;
    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    /** @throws IllegalArgumentException if there are no such teeth */
    public InvoluteTeeth {
        if (teeth < FEWEST) {
            throw new Refused("model.teeth.too-few", teeth);
        }
        if (module.signum() <= 0) {
            throw new Refused("model.teeth.module", module);
        }
        if (pressureAngle.signum() <= 0 || pressureAngle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.teeth.pressure-angle", pressureAngle.toPlainString());
        }
        if (helix.signum() < 0 || helix.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.teeth.helix", helix.toPlainString());
        }
    }

    /** The module of a diametral pitch, which counts teeth to the inch of diameter. */
    public static Length moduleOf(BigDecimal diametralPitch) {
        return Length.of("1", Unit.INCH).dividedBy(diametralPitch);
    }

    /** Whether there is no helix. */
    public boolean isSpur() {
        return helix.signum() == 0;
    }

    /**
     * Thickness of a tooth along the reference circle, in the normal section, by its profile shift.
     *
     * @throws IllegalArgumentException if so much shift leaves no tooth, or no space
     */
    public Length thickness(BigDecimal shift) {
        return Nanometres.round(arc(shift));
    }

    /** The same before it is rounded. */
    double arc(BigDecimal shift) {
        double thickness = normalModule() * (Math.PI / 2 + 2 * shift.doubleValue() * Math.tan(normalAngle()));
        if (!(thickness > 0 && thickness < pitch())) {
            throw new Refused("model.teeth.shift", shift.toPlainString());
        }
        return thickness;
    }

    /** The thickness, if that leaves both a tooth and a space. */
    double checked(Length thickness) {
        double size = Nanometres.of(thickness);
        if (!(size > 0 && size < pitch())) {
            throw new Refused("model.teeth.thickness", thickness, Nanometres.round(pitch()));
        }
        return size;
    }

    double normalModule() {
        return Nanometres.of(module);
    }

    double normalAngle() {
        return Math.toRadians(pressureAngle.doubleValue());
    }

    double helixAngle() {
        return Math.toRadians(helix.doubleValue());
    }

    double transverseAngle() {
        return Math.atan(Math.tan(normalAngle()) / Math.cos(helixAngle()));
    }

    double baseDiameter() {
        return teeth * normalModule() / Math.cos(helixAngle()) * Math.cos(transverseAngle());
    }

    /** The cosine of the helix at the base circle. */
    double cosineOfBaseHelix() {
        return Math.cos(helixAngle()) * Math.cos(normalAngle()) / Math.cos(transverseAngle());
    }

    /** From tooth to tooth along the reference circle, in the normal section. */
    double pitch() {
        return Math.PI * normalModule();
    }
}
