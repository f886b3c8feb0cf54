package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * How errors of wire, pitch and flank go into the pitch diameter over wires, and how uncertain that diameter is.
 *
 * <p>With the simple formula E = M + P/2 · cot A − W (1 + csc A): for each unit of the reading 1, of the wire −(1 + csc
 * A), of the pitch (cot A)/2, and for each radian of the half angle (W cos A − P/2) csc² A. Uncertainty: u²(E) = u²(M)
 * + (1 + csc A)² u²(W) + (cot A / 2)² u²(P).
 *
 * <p>By wire and by pitch without unit; by half angle a length, on diameter, for each degree. A wire too large by
 * something makes the pitch diameter come out too large by {@code −byWire} times as much if its nominal size is
 * reckoned with.
 *
 * <p>Uncertainties of zero leave zero. The best wire has no error by half angle.
 *
 * <p>Source: derivatives of the formula in ASME B1.2 and Machinery's Handbook, 31st ed., p. 2127, put together as in
 * JCGM 100:2008, 5.1.2. The lead angle changes them by less than a hundredth up to 5°. All wires of a set are taken to
 * be wrong by the same amount, as they are measured by one comparison: the worst case.
 */
public final class WireSensitivity {

    private final Groove groove;
    private final Length wire;

    /** @param groove half a pitch wide at the pitch diameter */
    public WireSensitivity(Groove groove, Length wire) {
        this.groove = groove;
        this.wire = Positive.size("wire-diameter", wire);
    }

    /** Less than zero: a larger wire under the same reading means a smaller thread. */
    public double byWire() {
        return -groove.wireFactor();
    }

    /** More than zero. */
    public double byPitch() {
        return 1 / (2 * groove.tangent());
    }

    /** For one degree; less than zero for a wire below the best. */
    public Length byHalfAngle() {
        double sine = Math.sin(groove.radians());
        double perRadian =
                (Nanometres.of(wire) * Math.cos(groove.radians()) - Nanometres.of(groove.pitch()) / 2) / (sine * sine);
        return Nanometres.round(Math.toRadians(perRadian));
    }

    /**
     * Standard uncertainty of the pitch diameter from those of the reading, the wires and the pitch.
     *
     * @throws IllegalArgumentException if one of them is less than zero
     */
    public Length standard(Length ofReading, Length ofWire, Length ofPitch) {
        double reading = notNegative("reading", ofReading);
        double wires = byWire() * notNegative("wire", ofWire);
        double pitch = byPitch() * notNegative("pitch", ofPitch);
        return Nanometres.round(Math.sqrt(reading * reading + wires * wires + pitch * pitch));
    }

    private static double notNegative(String what, Length uncertainty) {
        if (uncertainty.signum() < 0) {
            throw new Refused("model.wire-sensitivity.uncertainty-less", what, uncertainty);
        }
        return Nanometres.of(uncertainty);
    }
}
