package org.tenthwise.model.thread;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;

/**
 * A screw thread by its basic geometry.
 *
 * @param diameter basic major diameter, more than the depth of thread allows for a core
 * @param pitch    axial pitch, more than nought; threads to the inch are turned into it by the reader of the plan
 * @param starts   one or more
 */
public record ScrewThread(ThreadForm form, Length diameter, Length pitch, int starts) {

    public ScrewThread {
        if (pitch.signum() <= 0) {
            throw new IllegalArgumentException("Pitch %s is not more than nought".formatted(pitch));
        }
        if (starts < 1) {
            throw new IllegalArgumentException("A thread has one start or more, not %d".formatted(starts));
        }
        if (Nanometres.of(diameter) <= 2 * form.basicRootDepth() * Nanometres.of(pitch)) {
            throw new IllegalArgumentException(
                    "Diameter %s leaves no core under a pitch of %s".formatted(diameter, pitch));
        }
    }

    /**
     * The pitch that so many threads to the inch have, to 1e-12 mm.
     *
     * @param threadsToTheInch more than nought
     */
    public static Length pitchOf(BigDecimal threadsToTheInch) {
        return Length.of("1", Unit.INCH).dividedBy(threadsToTheInch);
    }

    /** Axial travel in one turn: pitch times starts. */
    public Length lead() {
        return pitch.times(BigDecimal.valueOf(starts));
    }

    /** Basic pitch diameter, rounded to 1 nm. */
    public Length basicPitchDiameter() {
        return Nanometres.round(Nanometres.of(diameter) - 2 * form.pitchLineDepth() * Nanometres.of(pitch));
    }

    /** Basic minor diameter, rounded to 1 nm: that of the basic profile, with no clearance. */
    public Length basicMinorDiameter() {
        return Nanometres.round(Nanometres.of(diameter) - 2 * form.basicRootDepth() * Nanometres.of(pitch));
    }
}
