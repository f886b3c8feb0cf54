package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.words.Refused;

/**
 * Pitch diameter of an external thread from a measurement over wires, and the other way round. Three wires line the
 * anvils up by themselves; two, one on each side, measure the same where the anvils are kept square to the axis and one
 * of them may float along it by half a pitch.
 *
 * <p>Exactly: a ball of the wire's diameter in a screw groove with flanks straight in axial section; see
 * {@link BallInGroove}. Two approximate formulas stand beside it, with half angle A, groove width s at the pitch
 * diameter (half the pitch), wire W and the {@link LeadCorrection} c. Simple: E = M + s · cot A − W (1 + csc A).
 * Corrected: the simple one less c.
 *
 * <p>Diameters, to 1 nm. A measurement larger by some amount gives a pitch diameter larger by nearly the same amount.
 *
 * <p>With a lead angle near zero all three agree. At 5° of lead the simple one gives a 29° thread too large by 0.007
 * pitch, the corrected one is good to 0.0003 pitch.
 *
 * <p>Source: simple and corrected, ASME B1.2 and Machinery's Handbook, 31st ed., p. 2127; exact, geometry, in agreement
 * with the table on p. 2136 there. The axial pitch and not the lead is what the groove is half as wide as, so for
 * several starts only k and B grow.
 */
public final class MeasurementOverWires {

    private final Groove groove;
    private final Length wire;
    private final Length pitchDiameterOfTheLead;
    private final BallInGroove ball;

    /**
     * For any wire whatever; {@link #seat} tells where it lies.
     *
     * @param pitchDiameterOfTheLead where the corrected formula takes the lead angle: the basic pitch diameter, if
     *     known
     * @throws IllegalArgumentException if the wire is not above zero
     */
    public MeasurementOverWires(Groove groove, Length wire, Length pitchDiameterOfTheLead) {
        this.groove = groove;
        this.wire = Positive.size("wire-diameter", wire);
        this.pitchDiameterOfTheLead = pitchDiameterOfTheLead;
        this.ball = new BallInGroove(
                groove.tangent(), groove.risePerTurn(), Nanometres.of(groove.width()), Nanometres.of(wire));
    }

    /**
     * For wires that fit a thread.
     *
     * @throws IllegalArgumentException if at the basic size of the thread the wire would rest on the crests, or lie so
     *     deep that the anvils would
     */
    public MeasurementOverWires(ScrewThread thread, Length wire) {
        this(Groove.of(thread), wire, thread.basicPitchDiameter());
        WireSeat seat = seat(thread.basicPitchDiameter(), thread.diameter());
        if (seat == WireSeat.ON_THE_CRESTS) {
            throw new Refused("model.measurement-over-wires.wire-too", wire, thread.pitch());
        }
        if (seat == WireSeat.BELOW_THE_CREST) {
            throw new Refused("model.measurement-over-wires.wire-too-thin", wire, thread.pitch());
        }
    }

    /** Where the wire lies in a thread of this pitch diameter with crests on this diameter. Flush is on the flanks. */
    public WireSeat seat(Length pitchDiameter, Length crest) {
        return ball.inPitchDiameter(Nanometres.of(pitchDiameter))
                .filter(rest -> !Nanometres.round(2 * rest.contact()).isAbove(crest))
                .map(rest -> over(rest).isBelow(crest) ? WireSeat.BELOW_THE_CREST : WireSeat.ON_THE_FLANKS)
                .orElse(WireSeat.ON_THE_CRESTS);
    }

    /** The diameter on which the wire touches the flanks of a thread of this pitch diameter. */
    public Length contact(Length pitchDiameter) {
        return Nanometres.round(2 * rest(pitchDiameter).contact());
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
                .orElseThrow(
                        () -> new Refused("model.measurement-over-wires.over-wires", overWires, wire, groove.pitch()));
    }

    /**
     * The measurement over wires, exactly.
     *
     * @throws IllegalArgumentException if the wire finds no rest in a thread of that pitch diameter
     */
    public Length overWires(Length pitchDiameter) {
        return over(rest(Positive.size("pitch-diameter", pitchDiameter)));
    }

    /** The pitch diameter without regard to the lead angle. */
    public Length simplePitchDiameter(Length overWires) {
        return Nanometres.round(Nanometres.of(overWires) - simpleDifference());
    }

    /** The measurement over wires without regard to the lead angle. */
    public Length simpleOverWires(Length pitchDiameter) {
        return Nanometres.round(Nanometres.of(pitchDiameter) + simpleDifference());
    }

    /** The pitch diameter with the usual correction for the lead angle. */
    public Length correctedPitchDiameter(Length overWires) {
        return simplePitchDiameter(overWires).minus(leadCorrection());
    }

    /** The measurement over wires with the usual correction for the lead angle. */
    public Length correctedOverWires(Length pitchDiameter) {
        return simpleOverWires(pitchDiameter).plus(leadCorrection());
    }

    /** What the corrected formula takes off the simple one. */
    public Length leadCorrection() {
        return LeadCorrection.of(groove, wire, pitchDiameterOfTheLead);
    }

    private double simpleDifference() {
        return Nanometres.of(wire) * groove.wireFactor() - groove.sharpDepth();
    }

    private BallInGroove.Rest rest(Length pitchDiameter) {
        return ball.inPitchDiameter(Nanometres.of(pitchDiameter))
                .orElseThrow(() ->
                        new Refused("model.measurement-over-wires.wire-finds", wire, pitchDiameter, groove.pitch()));
    }

    private Length over(BallInGroove.Rest rest) {
        return Nanometres.round(2 * rest.centre() + Nanometres.of(wire));
    }
}
