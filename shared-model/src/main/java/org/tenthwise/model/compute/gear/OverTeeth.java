package org.tenthwise.model.compute.gear;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The span over several teeth: between two flat, parallel anvils on the outer flanks of k teeth.
 *
 * <p>W = m cos a · (π (k − 1/2) + z inv a_t) + 2 x m sin a; with tooth thickness s in place of the shift x, W = cos a ·
 * (π m (k − 1) + s + z m inv a_t). One tooth more adds the base pitch, π m cos a. The anvils touch on the diameter
 * √(db² + (W cos bb)²), bb the base helix. They touch near the reference circle over z a / 180° + 1/2 teeth.
 *
 * <p>Lengths, to 1 nm, in the normal section.
 *
 * <p>So many teeth that the anvils would touch above the point of the tooth are refused. Helical teeth must be wider
 * than the span leans along them.
 *
 * <p>Source: ISO 21771:2007; DIN 5480 for splines.
 *
 * @param teeth what is measured
 * @param over how many of them, one or more and not all
 */
public record OverTeeth(InvoluteTeeth teeth, int over) {

    private static final double HALF_TURN = 180;

    /** @throws IllegalArgumentException if there are not so many teeth */
    public OverTeeth {
        if (over < 1 || over >= teeth.teeth()) {
            throw new Refused("model.over-teeth.too-many", over, teeth.teeth());
        }
    }

    /**
     * Over teeth of that thickness.
     *
     * @throws IllegalArgumentException if the anvils could not touch the flanks
     */
    public Length span(Length thickness) {
        double arc = teeth.checked(thickness);
        double span = Math.cos(teeth.normalAngle()) * (teeth.pitch() * (over - 1) + arc + involutes());
        double contact = contactAngle(span);
        double left = arc / (teeth.teeth() * teeth.normalModule())
                + Involute.of(teeth.transverseAngle())
                - Involute.of(contact);
        if (left <= 0) {
            throw new Refused("model.over-teeth.above-tooth", over, usual());
        }
        return Nanometres.round(span);
    }

    /** The diameter on which the anvils touch with that span. */
    public Length contactDiameter(Length span) {
        return Nanometres.round(teeth.baseDiameter() / Math.cos(contactAngle(Nanometres.of(span))));
    }

    /**
     * The tooth thickness of a span.
     *
     * @throws IllegalArgumentException if no teeth could be read so
     */
    public Length thickness(Length span) {
        double thickness =
                Nanometres.of(span) / Math.cos(teeth.normalAngle()) - teeth.pitch() * (over - 1) - involutes();
        if (!(thickness > 0 && thickness < teeth.pitch())) {
            throw new Refused("model.over-teeth.no-teeth", span, over);
        }
        return Nanometres.round(thickness);
    }

    /** How many teeth bring the anvils near the reference circle of teeth without a shift. */
    public int usual() {
        double virtual = teeth.teeth() / Math.pow(Math.cos(teeth.helixAngle()), 3);
        return (int) Math.max(1, Math.round(virtual * teeth.pressureAngle().doubleValue() / HALF_TURN + 0.5));
    }

    private double involutes() {
        return teeth.teeth() * teeth.normalModule() * Involute.of(teeth.transverseAngle());
    }

    private double contactAngle(double span) {
        return Math.atan(span * teeth.cosineOfBaseHelix() / teeth.baseDiameter());
    }
}
