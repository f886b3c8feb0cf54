package org.tenthwise.model.compute.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;

/**
 * The angle of a thread to the plane square to the axis.
 *
 * <p>tan B = lead / (π · pitch diameter).
 *
 * <p>Degrees, to 1e-12, more than zero and less than 90. The lead is the pitch times the starts.
 *
 * <p>A pitch diameter far larger than the lead gives an angle near zero.
 *
 * <p>Source: ASME B1.5 and Machinery's Handbook, 31st ed., p. 2134: at the pitch diameter, by the lead. The major
 * diameter instead loses 0.0002 in over wires on a 1-5 thread of 29°.
 */
public final class LeadAngle {

    private static final int PLACES_OF_A_DEGREE = 12;

    private LeadAngle() {}

    /** @throws IllegalArgumentException if the pitch diameter is not above zero */
    public static BigDecimal degrees(ScrewThread thread, Length pitchDiameter) {
        return degrees(thread.lead(), pitchDiameter);
    }

    /** @throws IllegalArgumentException if the pitch diameter is not above zero */
    public static BigDecimal degrees(Length lead, Length pitchDiameter) {
        double tangent =
                Nanometres.of(lead) / (Math.PI * Nanometres.of(Positive.size("pitch-diameter", pitchDiameter)));
        return BigDecimal.valueOf(Math.toDegrees(Math.atan(tangent)))
                .setScale(PLACES_OF_A_DEGREE, RoundingMode.HALF_EVEN);
    }
}
