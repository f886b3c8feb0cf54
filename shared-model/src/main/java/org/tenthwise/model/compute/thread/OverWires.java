package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;

/**
 * Pitch diameter of an external thread from a measurement over three wires, and the other way round.
 *
 * <p>Exactly: a ball of the wire's diameter in a screw groove with flanks straight in axial section, half a pitch wide at
 * the pitch line; see {@link BallInGroove}. Two approximate formulas stand beside it, with half angle A, pitch P, wire W
 * and lead angle B at the basic pitch diameter. Simple: E = M + P/2 · cot A − W (1 + csc A). Corrected: the simple one less
 * W/2 · tan² B · cos A · cot A.
 *
 * <p>Diameters, to 1 nm. A measurement larger by some amount gives a pitch diameter larger by nearly the same amount.
 *
 * <p>With a lead angle near nought all three agree. At 5° of lead the simple one gives a 29° thread too large by 0.007 pitch,
 * the corrected one is good to 0.0003 pitch.
 *
 * <p>Source: simple and corrected, ASME B1.2 and Machinery's Handbook, 31st ed., p. 2127; exact, geometry, in agreement with
 * the table on p. 2136 there. The axial pitch and not the lead is what the groove is half as wide as, so for several
 * starts only k and B grow.
 */
public final class OverWires {

    private final ScrewThread thread;
    private final Length wire;
    private final double halfAngle;
    private final BallInGroove ball;

    /**
     * @throws IllegalArgumentException if at the basic size of the thread the wire would rest on the crests, or lie so deep
     *                                  that the anvils would
     */
    public OverWires(ScrewThread thread, Length wire) {
        this.thread = thread;
        this.wire = Positive.size("Wire diameter", wire);
        this.halfAngle = Math.toRadians(thread.form().halfAngleDegrees());
        this.ball = new BallInGroove(Math.tan(halfAngle), Nanometres.of(thread.lead()) / (2 * Math.PI),
                Nanometres.of(thread.pitch()) / 2, Nanometres.of(wire));
        BallInGroove.Rest rest = ball.inPitchDiameter(Nanometres.of(thread.basicPitchDiameter()))
                .filter(found -> found.contact() <= Nanometres.of(thread.diameter()) / 2)
                .orElseThrow(() -> new IllegalArgumentException(
                        "A wire of %s is too thick for a pitch of %s: it rests on the crests, not on the flanks".formatted(
                                wire, thread.pitch())));
        if (over(rest).isBelow(thread.diameter())) {
            throw new IllegalArgumentException(
                    "A wire of %s is too thin for a pitch of %s: it does not stand out over the crests".formatted(
                            wire, thread.pitch()));
        }
    }

    /**
     * The pitch diameter, exactly.
     *
     * @throws IllegalArgumentException if no thread can stand between wires that far apart
     */
    public Length pitchDiameter(Length overWires) {
        double centre = (Nanometres.of(overWires) - Nanometres.of(wire)) / 2;
        return ball.withCentreAt(centre)
                .map(rest -> Nanometres.round(rest.pitchDiameter()))
                .orElseThrow(() -> new IllegalArgumentException(
                        "%s over wires of %s leaves no room for a thread of pitch %s".formatted(
                                overWires, wire, thread.pitch())));
    }

    /**
     * The measurement over wires, exactly.
     *
     * @throws IllegalArgumentException if the wire finds no rest in a thread of that pitch diameter
     */
    public Length overWires(Length pitchDiameter) {
        return ball.inPitchDiameter(Nanometres.of(Positive.size("Pitch diameter", pitchDiameter)))
                .map(this::over)
                .orElseThrow(() -> new IllegalArgumentException(
                        "A wire of %s finds no rest in a thread of pitch diameter %s and pitch %s".formatted(
                                wire, pitchDiameter, thread.pitch())));
    }

    /** The pitch diameter without regard to the lead angle. */
    public Length simplePitchDiameter(Length overWires) {
        return Nanometres.round(simple(overWires));
    }

    /** The pitch diameter with the usual correction for the lead angle. */
    public Length correctedPitchDiameter(Length overWires) {
        double tangentOfLead = Nanometres.of(thread.lead()) / (Math.PI * Nanometres.of(thread.basicPitchDiameter()));
        double correction = Nanometres.of(wire) / 2 * tangentOfLead * tangentOfLead * Math.cos(halfAngle) / Math.tan(halfAngle);
        return Nanometres.round(simple(overWires) - correction);
    }

    private double simple(Length overWires) {
        return Nanometres.of(overWires) + Nanometres.of(thread.pitch()) / 2 / Math.tan(halfAngle)
                - Nanometres.of(wire) * (1 + 1 / Math.sin(halfAngle));
    }

    private Length over(BallInGroove.Rest rest) {
        return Nanometres.round(2 * rest.centre() + Nanometres.of(wire));
    }
}
