package org.tenthwise.model.compute.roundness;

import org.tenthwise.model.quantity.Length;

/**
 * How far one jaw goes, to bring the work to the middle.
 *
 * @param jaw 1 for the first jaw, then on as the jaws were named
 * @param in more than zero: the jaw goes in, or gets a shim of that thickness, and pushes the work away from itself;
 *     less than zero: it backs out
 */
public record JawMove(int jaw, Length in) {}
