package org.tenthwise.model.thread;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Word;

/**
 * The basic form of a thread in axial section.
 *
 * <p>Depths are from the basic major diameter, in pitches. Sources: 60° ASME B1.1 and ISO 68-1 (H = 0.866025 P, major
 * to pitch line 3H/8); 29° ASME B1.5 (half a pitch to the basic root) and B1.8 (0.3 pitch); 30° ISO 2901 (half a
 * pitch).
 */
public enum ThreadForm {
    UNIFIED("ASME B1.1", 30.0, 0.324759526419, 0.54126587737),
    METRIC("ISO 965-1", 30.0, 0.324759526419, 0.54126587737),
    ACME("ASME B1.5", 14.5, 0.25, 0.5),
    STUB_ACME("ASME B1.8", 14.5, 0.15, 0.3),
    TRAPEZOIDAL("ISO 2903", 15.0, 0.25, 0.5);

    private final String limitsStandard;
    private final double halfAngleDegrees;
    private final double pitchLineDepth;
    private final double basicRootDepth;

    ThreadForm(String limitsStandard, double halfAngleDegrees, double pitchLineDepth, double basicRootDepth) {
        this.limitsStandard = limitsStandard;
        this.halfAngleDegrees = halfAngleDegrees;
        this.pitchLineDepth = pitchLineDepth;
        this.basicRootDepth = basicRootDepth;
    }

    /** How plan files name the form. */
    public String key() {
        return Word.of(this);
    }

    /** The standard that has the limits of size. */
    public String limitsStandard() {
        return limitsStandard;
    }

    /** Whether its standard is written in millimetres; in inches if not. */
    public boolean isMetric() {
        return this == METRIC || this == TRAPEZOIDAL;
    }

    /** Angle of one flank to the plane square to the axis. */
    public double halfAngleDegrees() {
        return halfAngleDegrees;
    }

    /** Basic major to pitch line, on radius, in pitches. */
    public double pitchLineDepth() {
        return pitchLineDepth;
    }

    /** Basic major to basic root, on radius, in pitches; no clearance. */
    public double basicRootDepth() {
        return basicRootDepth;
    }

    /** Basic major diameter less basic pitch diameter, to 1 nm. */
    public Length majorLessPitchDiameter(Length pitch) {
        return Nanometres.round(2 * pitchLineDepth * Nanometres.of(pitch));
    }

    /** Basic major diameter less basic minor diameter of the screw, to 1 nm. */
    public Length majorLessMinorDiameter(Length pitch) {
        return Nanometres.round(2 * basicRootDepth * Nanometres.of(pitch));
    }

    public static Optional<ThreadForm> ofKey(String key) {
        return Word.find(ThreadForm.class, key);
    }
}
