package org.tenthwise.model.compute.gear;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * Thickness of a tooth as a gear tooth caliper reads it: straight across, at the reference circle.
 *
 * <p>In the normal section, with z_v = z / cos³ b virtual teeth: half angle 90° / z_v + 360° x tan a / (π z_v), which
 * is s / (m z_v) of arc for a thickness s; chord m z_v sin(half angle). The height to set above it is the addendum and
 * m z_v (1 − cos(half angle)) / 2.
 *
 * <p>Lengths, to 1 nm; the angle in degrees.
 *
 * <p>The height starts at the tip: an outside diameter that is not the nominal one moves it by half the difference.
 *
 * <p>Source: SDP/SI, Elements of Metric Gear Technology, section 10.
 *
 * @param thickness along the reference circle
 * @param halfAngle of it as seen from the centre of the virtual gear, degrees
 * @param virtualTeeth teeth of the spur gear with that normal section
 * @param chord straight across
 * @param rise of the arc over its chord
 */
public record ChordalThickness(Length thickness, double halfAngle, double virtualTeeth, Length chord, Length rise) {

    /** @throws IllegalArgumentException if so much shift leaves no tooth, or no space */
    public static ChordalThickness of(InvoluteTeeth teeth, BigDecimal shift) {
        double virtual = teeth.teeth() / Math.pow(Math.cos(teeth.helixAngle()), 3);
        double diameter = teeth.normalModule() * virtual;
        double half = teeth.arc(shift) / diameter;
        return new ChordalThickness(
                teeth.thickness(shift),
                Math.toDegrees(half),
                virtual,
                Nanometres.round(diameter * Math.sin(half)),
                Nanometres.round(diameter * Math.pow(Math.sin(half / 2), 2)));
    }
}
