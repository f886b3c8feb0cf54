package org.tenthwise.model.compute.thread;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The diameter at the root of a thread from a reading with points in two grooves opposite each other.
 *
 * <p>√(M² − (P / 2)²), where M is the reading and P the pitch, from one groove to the next. Half a turn on, the grooves
 * of a thread with an odd number of starts lie half a pitch along: the points stand askew by that much, and M is too
 * large. With an even number of starts two grooves face each other squarely, and M is the diameter.
 *
 * <p>To 1 nm, never more than M. The error it takes away is about P² / (8 M): 0.19 mm on the root of Tr 40×7.
 *
 * <p>A reading of half a pitch or less is of no thread and is refused.
 *
 * <p>Source: geometry of a right-angled triangle, from memory; points are taken to reach the same depth of both
 * grooves.
 */
public final class AcrossGrooves {

    private AcrossGrooves() {}

    /** How far along one point stands from the other: half a pitch, or zero where the number of starts is even. */
    public static Length askew(Length pitch, int starts) {
        if (pitch.signum() <= 0) {
            throw new Refused("model.across-grooves.thread-pitch", pitch);
        }
        if (starts < 1) {
            throw new Refused("model.across-grooves.thread-one", starts);
        }
        return starts % 2 == 0 ? Length.ZERO : pitch.half();
    }

    /**
     * @param read with points in opposite grooves
     * @param pitch more than zero
     * @param starts one or more
     * @throws IllegalArgumentException if there is no such thread
     */
    public static Length diameter(Length read, Length pitch, int starts) {
        Length askew = askew(pitch, starts);
        if (!read.isAbove(askew)) {
            throw new Refused("model.across-grooves.across-grooves", read, askew);
        }
        BigDecimal square =
                read.minus(askew).millimetres().multiply(read.plus(askew).millimetres());
        return askew.signum() == 0 ? read : Nanometres.round(Math.sqrt(square.doubleValue()));
    }
}
