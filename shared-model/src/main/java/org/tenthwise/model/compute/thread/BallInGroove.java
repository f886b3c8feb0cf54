package org.tenthwise.model.compute.thread;

import java.util.Optional;
import org.tenthwise.model.compute.equations.ThreeUnknowns;

/**
 * A ball resting on both flanks of a screw groove whose flanks are straight in axial section. A wire that is free to
 * align itself touches the flanks where a ball of its diameter does: turning the wire about the ball's centre can only
 * lift it.
 *
 * <p>With k = lead / 2π, groove width s at pitch diameter E, half angle A, wire W and the ball's centre at radius R,
 * the point of contact at radius r and turned by t from the centre has
 *
 * <pre>
 * z = k t + s/2 + (r − E/2) tan A          height of the flank over the middle of the groove
 * r − R cos t + z tan A = 0                the ball touches along the radius
 * R r sin t + k z = 0                      the ball touches round the axis
 * (r cos t − R)² + (r sin t)² + z² = W²/4  at half the wire's diameter
 * </pre>
 *
 * solved for r, t and R, or for r, t and E, by Newton's method.
 *
 * <p>Millimetres and radians. Absent where the ball finds no rest. A lead of zero gives t = 0 and the simple formula.
 *
 * <p>Source: geometry; the figures agree with the table for large lead angles in Machinery's Handbook, 31st ed., p.
 * 2136.
 *
 * @param tangent of the half angle
 * @param risePerTurn k: lead / 2π
 * @param width of the groove at the pitch line, along the axis
 * @param wire diameter
 */
record BallInGroove(double tangent, double risePerTurn, double width, double wire) {

    private static final int MOST_STEPS = 50;
    private static final double SMALL_STEP = 1e-9;

    /**
     * Where the ball rests.
     *
     * @param contact radius of the point of contact
     * @param centre radius of the ball's centre
     * @param pitchDiameter of the groove
     */
    record Rest(double contact, double centre, double pitchDiameter) {}

    /** Where the ball rests in a groove of this pitch diameter. */
    Optional<Rest> inPitchDiameter(double pitchDiameter) {
        double centre = pitchDiameter / 2 + simpleRise();
        return settle(new Rest(simpleContact(centre), centre, pitchDiameter), false);
    }

    /** The groove in which the centre of the ball comes to this radius. */
    Optional<Rest> withCentreAt(double centre) {
        double pitchDiameter = 2 * (centre - simpleRise());
        return settle(new Rest(simpleContact(centre), centre, pitchDiameter), true);
    }

    /** Centre over pitch line where the lead is zero: W/2 · csc A − s/2 · cot A. */
    private double simpleRise() {
        return wire / 2 * Math.sqrt(1 + 1 / (tangent * tangent)) - width / 2 / tangent;
    }

    /** The same for the point of contact: below the centre by W/2 · sin A. */
    private double simpleContact(double centre) {
        return centre - wire / 2 * tangent / Math.sqrt(1 + tangent * tangent);
    }

    private Optional<Rest> settle(Rest start, boolean pitchDiameterUnknown) {
        Rest rest = start;
        double turn = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double[] step = step(rest, turn, pitchDiameterUnknown);
            turn -= step[1];
            rest = new Rest(
                    rest.contact() - step[0],
                    pitchDiameterUnknown ? rest.centre() : rest.centre() - step[2],
                    pitchDiameterUnknown ? rest.pitchDiameter() - step[2] : rest.pitchDiameter());
            double largest = Math.max(Math.abs(step[0]), Math.max(Math.abs(step[1]), Math.abs(step[2])));
            if (largest < SMALL_STEP) {
                return Optional.of(rest).filter(BallInGroove::isReal);
            }
        }
        return Optional.empty();
    }

    private static boolean isReal(Rest rest) {
        return rest.contact() > 0 && rest.contact() < rest.centre() && rest.pitchDiameter() > 0;
    }

    private double[] step(Rest rest, double turn, boolean pitchDiameterUnknown) {
        double r = rest.contact();
        double centre = rest.centre();
        double k = risePerTurn;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double z = k * turn + width / 2 + (r - rest.pitchDiameter() / 2) * tangent;
        double along = r - centre * cos + z * tangent;
        double round = centre * r * sin + k * z;
        double apart = (r * cos - centre) * (r * cos - centre) + r * sin * r * sin + z * z - wire * wire / 4;
        double cross = centre * sin + k * tangent;
        double[] third = pitchDiameterUnknown
                ? new double[] {-tangent * tangent / 2, -k * tangent / 2, -z * tangent}
                : new double[] {-cos, r * sin, 2 * (centre - r * cos)};
        return ThreeUnknowns.solve(
                new double[][] {
                    {1 + tangent * tangent, cross, third[0]},
                    {cross, centre * r * cos + k * k, third[1]},
                    {2 * along, 2 * round, third[2]}
                },
                new double[] {along, round, apart});
    }
}
