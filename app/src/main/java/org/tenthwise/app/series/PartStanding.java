package org.tenthwise.app.series;

import org.tenthwise.app.history.RunFacts;
import org.tenthwise.model.verdict.VerdictKind;

/** What a part is at a characteristic, as far as anybody may count parts. */
public enum PartStanding {
    /** Shown to be inside. */
    IN,
    /** Outside. */
    OUT,
    /** Used by concession, or inside only after a repair: not as the drawing has it. */
    CONCEDED,
    /** Neither shown to be in nor to be out. */
    UNPROVEN,
    /** Metal is left, and the run is open: what it comes to is not known yet. */
    STILL_TO_CUT;

    static PartStanding of(RunFacts run, VerdictKind verdict, boolean conceded) {
        if (conceded) {
            return CONCEDED;
        }
        return switch (verdict) {
            case PASS -> IN;
            case FAIL -> OUT;
            case CUT_AGAIN -> run.closed() ? OUT : STILL_TO_CUT;
            case UNPROVEN, OPEN -> UNPROVEN;
        };
    }

    /** Whether it counts against the parts. */
    public boolean isReject() {
        return this == OUT || this == CONCEDED;
    }
}
