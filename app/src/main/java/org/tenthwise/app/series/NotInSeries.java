package org.tenthwise.app.series;

import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;

/**
 * What was found of a characteristic in a run and is no point of its series.
 *
 * @param step what it came to there
 */
public record NotInSeries(RunFacts run, StepSummary step, Why why) {

    /** Why it is none. */
    public enum Why {
        /** The run was begun by mistake or leads nowhere. */
        PUT_AWAY,
        /** Readings are missing, were struck out, or say nothing of the work as it is now. */
        NOT_READ_TO_ITS_END,
        /** It was kept though it is far off what is expected. */
        FAR_OFF,
        /** The same part was measured again in a later run, which has the last word. */
        MEASURED_AGAIN_LATER
    }
}
