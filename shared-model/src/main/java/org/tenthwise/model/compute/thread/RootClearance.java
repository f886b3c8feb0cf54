package org.tenthwise.model.compute.thread;

import org.tenthwise.model.quantity.Length;

/**
 * The room between a wire and the root of the thread.
 *
 * <p>Over wires / 2 − wire − minor diameter / 2.
 *
 * <p>Exact, on radius. Less than zero means that the wire rests on the root, not on the flanks, and the measurement
 * over wires says nothing about the pitch diameter: it comes out too large.
 *
 * <p>Zero is a wire that just touches the root.
 *
 * <p>Source: geometry. The minor diameter is the one measured, as no standard fixes the depth a cut root reaches.
 */
public final class RootClearance {

    private RootClearance() {}

    public static Length of(Length overWires, Length wire, Length minorDiameter) {
        return overWires.half().minus(wire).minus(minorDiameter.half());
    }
}
