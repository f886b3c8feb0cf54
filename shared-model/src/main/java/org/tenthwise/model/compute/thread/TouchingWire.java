package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The wire that touches the flanks of a leaning groove just at the pitch diameter, and what the measurement over it
 * exceeds that diameter by. An error of the half angle does the least harm with this wire.
 *
 * <p>The equations of {@link BallInGroove} with the point of contact at r = E/2: with z = k t + s/2,
 *
 * <pre>
 * (r + z tan A) r tan t + k z = 0          solved for t by Newton's method
 * R = (r + z tan A) / cos t                the centre
 * W = 2 √((r cos t − R)² + (r sin t)² + z²)
 * </pre>
 *
 * and over wires less pitch diameter = 2R + W − E.
 *
 * <p>Both to 1 nm, more than zero.
 *
 * <p>With a lead near zero this is s / cos A, the best wire of {@link WireSizes}, and it is less the steeper the lead.
 *
 * <p>Source: geometry; in agreement with both columns of the table for large lead angles in Machinery's Handbook, 31st
 * ed., p. 2136, within 0.00003 pitch.
 *
 * @param diameter of the wire
 * @param overLessPitchDiameter the constant to take off a measurement over that wire
 */
public record TouchingWire(Length diameter, Length overLessPitchDiameter) {

    private static final int MOST_STEPS = 50;
    private static final double SMALL_STEP = 1e-12;

    /** @throws IllegalArgumentException if the lead is too steep for a wire to touch there */
    public static TouchingWire of(Groove groove, Length pitchDiameter) {
        double radius = Nanometres.of(Positive.size("pitch-diameter", pitchDiameter)) / 2;
        double tangent = groove.tangent();
        double rise = groove.risePerTurn();
        double half = Nanometres.of(groove.width()) / 2;
        double turn = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double height = rise * turn + half;
            double reach = radius + height * tangent;
            double off = reach * radius * Math.tan(turn) + rise * height;
            double slope = rise * tangent * radius * Math.tan(turn)
                    + reach * radius / Math.pow(Math.cos(turn), 2)
                    + rise * rise;
            double step = off / slope;
            turn -= step;
            if (Math.abs(step) < SMALL_STEP && Math.abs(turn) < Math.PI / 2) {
                return touching(groove, radius, turn);
            }
        }
        throw new Refused("model.touching-wire.wire-touches", groove.lead(), pitchDiameter);
    }

    private static TouchingWire touching(Groove groove, double radius, double turn) {
        double height = groove.risePerTurn() * turn + Nanometres.of(groove.width()) / 2;
        double centre = (radius + height * groove.tangent()) / Math.cos(turn);
        double inwards = radius * Math.cos(turn) - centre;
        double wire = 2 * Math.sqrt(inwards * inwards + Math.pow(radius * Math.sin(turn), 2) + height * height);
        return new TouchingWire(Nanometres.round(wire), Nanometres.round(2 * centre + wire - 2 * radius));
    }
}
