package org.tenthwise.model.callout;

import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** What a part of a callout is of. */
public enum CalloutKind {
    LINEAR,
    DIAMETER,
    RADIUS,
    SQUARE,
    ARC,
    ANGLE,
    CHAMFER,
    CHAMFER_ANGLE,
    COUNTERBORE,
    COUNTERSINK,
    COUNTERSINK_ANGLE,
    SPOTFACE,
    DEPTH,
    EDGE,
    /** By its pitch diameter. */
    THREAD,
    /** For information. */
    REFERENCE,
    /** Exact; its tolerance stands in a frame. */
    BASIC,
    BASIC_ANGLE,
    ROUGHNESS_RA("roughness-Ra"),
    ROUGHNESS_RZ("roughness-Rz"),
    ROUGHNESS_RQ("roughness-Rq"),
    ROUGHNESS_RT("roughness-Rt"),
    HARDNESS,
    /** A weight, a torque, a pressure, a height in micrometres: its unit says of what. */
    SCALE,
    STRAIGHTNESS,
    FLATNESS,
    CIRCULARITY,
    CYLINDRICITY,
    PROFILE_LINE,
    PROFILE_SURFACE,
    ANGULARITY,
    PERPENDICULARITY,
    PARALLELISM,
    POSITION,
    CONCENTRICITY,
    SYMMETRY,
    CIRCULAR_RUNOUT,
    TOTAL_RUNOUT,
    /** Done to the part by a specification. */
    PROCESS,
    /** Looked at. */
    NOTE;

    private final String word;

    CalloutKind() {
        this.word = Word.of(this);
    }

    CalloutKind(String word) {
        this.word = word;
    }

    /** As the command writes it. */
    public String key() {
        return word;
    }

    /** What a person calls it. */
    public Message named() {
        return Message.ofValue("model.callout-kind", this);
    }

    /** Whether it is an angle. */
    boolean isOfAngle() {
        return this == ANGLE || this == CHAMFER_ANGLE || this == COUNTERSINK_ANGLE;
    }
}
