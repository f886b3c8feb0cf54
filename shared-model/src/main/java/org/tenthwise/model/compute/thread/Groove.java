package org.tenthwise.model.compute.thread;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.words.Refused;

/**
 * The groove of an external thread in axial section, as far as a wire knows it: two straight flanks, alike.
 *
 * @param halfAngle degrees from one flank to the plane square to the axis; more than 0, less than 90
 * @param pitch axial, more than zero
 * @param width of the groove along the axis at the pitch diameter, more than zero and less than the pitch; half the
 *     pitch where the pitch diameter is what its name says
 * @param starts one or more
 */
public record Groove(BigDecimal halfAngle, Length pitch, Length width, int starts) {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    public Groove {
        if (halfAngle.signum() <= 0 || halfAngle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new Refused("model.groove.half-angle", halfAngle.toPlainString());
        }
        Positive.size("pitch", pitch);
        Positive.size("groove-width", width);
        if (!width.isBelow(pitch)) {
            throw new Refused("model.groove.groove-width", width, pitch);
        }
        if (starts < 1) {
            throw new Refused("model.groove.thread-one", starts);
        }
    }

    /** Of the thread's own form, half a pitch wide at the pitch diameter. */
    public static Groove of(ScrewThread thread) {
        return new Groove(
                BigDecimal.valueOf(thread.form().halfAngleDegrees()),
                thread.pitch(),
                thread.pitch().half(),
                thread.starts());
    }

    /** Axial travel in one turn: pitch times starts. */
    public Length lead() {
        return pitch.times(BigDecimal.valueOf(starts));
    }

    /** s · cot A, what the formulas over wires add for the pitch: to 1 nm, on diameter. */
    public Length pitchConstant() {
        return Nanometres.round(sharpDepth());
    }

    double radians() {
        return Math.toRadians(halfAngle.doubleValue());
    }

    /** Tangent of the half angle. */
    double tangent() {
        return Math.tan(radians());
    }

    /** 1 + csc A: what a wire adds to the measurement for each of its own diameter, without a lead. */
    double wireFactor() {
        return 1 + 1 / Math.sin(radians());
    }

    /** s · cot A: how far on diameter the sharp root of the flanks lies below the pitch line. */
    double sharpDepth() {
        return Nanometres.of(width) / tangent();
    }

    /** lead / 2π */
    double risePerTurn() {
        return Nanometres.of(lead()) / (2 * Math.PI);
    }
}
