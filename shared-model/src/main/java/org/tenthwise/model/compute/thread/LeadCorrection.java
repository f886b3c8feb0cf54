package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;

/**
 * How much higher a wire lies because the groove leans with the lead angle.
 *
 * <p>c = W/2 · tan² B · cos A · cot A, with tan B = lead / (π · pitch diameter).
 *
 * <p>On diameter, to 1 nm, zero or more: a measurement over wires is larger by it, the pitch diameter by the simple
 * formula too large by it.
 *
 * <p>A lead angle near zero gives zero. Above 5° it is itself too large: by 0.0003 pitch at 5°, 0.001 at 8°, 0.005 at
 * 14°, with the best wire.
 *
 * <p>Source: ASME B1.2 and Machinery's Handbook, 31st ed., p. 2127: the simple formula is used where c is not more than
 * 0.00015 in, which single-start threads of 60° in the usual sizes keep to and Acme threads do not.
 */
public final class LeadCorrection {

    private static final Length LEFT_OUT_UP_TO = Length.of("0.00015", Unit.INCH);

    private LeadCorrection() {}

    /** @throws IllegalArgumentException if the pitch diameter is not above zero */
    public static Length of(Groove groove, Length wire, Length pitchDiameter) {
        double tangentOfLead = Nanometres.of(groove.lead())
                / (Math.PI * Nanometres.of(Positive.size("pitch-diameter", pitchDiameter)));
        return Nanometres.round(Nanometres.of(wire)
                / 2
                * tangentOfLead
                * tangentOfLead
                * Math.cos(groove.radians())
                / groove.tangent());
    }

    /** Whether the simple formula will no longer do. */
    public static boolean matters(Length correction) {
        return correction.isAbove(LEFT_OUT_UP_TO);
    }
}
