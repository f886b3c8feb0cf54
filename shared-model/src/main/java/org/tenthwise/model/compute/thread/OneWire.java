package org.tenthwise.model.compute.thread;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;

/**
 * A measurement over one wire, with the other anvil on the crests, turned into the measurement over wires on both
 * sides.
 *
 * <p>Over wires = 2 · over one wire − major diameter.
 *
 * <p>Exact, on diameter. The major diameter is the one measured at the same place: an error of it goes in whole, one
 * over the wire goes in twice.
 *
 * <p>A measurement equal to the major diameter gives the major diameter: a wire flush with the crest.
 *
 * <p>Source: geometry of a crest that runs true to the pitch line; common practice for threads too large for a
 * micrometer over three wires. Where the crest runs out, the mean of readings half a turn apart stands for the one
 * reading.
 */
public final class OneWire {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private OneWire() {}

    /** @throws IllegalArgumentException if one of the two sizes is not above zero */
    public static Length overWires(Length overOneWire, Length majorDiameter) {
        return Positive.size("over-one-wire", overOneWire)
                .times(TWO)
                .minus(Positive.size("major-diameter", majorDiameter));
    }
}
