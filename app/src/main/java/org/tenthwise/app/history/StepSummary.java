package org.tenthwise.app.history;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;

/**
 * What one step of a run came to so far.
 *
 * @param balloon of the drawing; absent for what has none
 * @param designator on the drawing; absent where it has none
 * @param limits without where they were taken from; absent for a step that only asks
 * @param places the size judged is written with
 * @param value the one size judged, where there is one
 * @param disposed the disposition in force, where there is one
 * @param found who read or answered last, and when, in whatever pass; for what is worked out of others, who found the
 *     last of them. Absent where nobody did, and while what is worked out is open
 * @param asked whether it is in the run; of what is not nothing is known
 */
public record StepSummary(
        int number,
        String name,
        Optional<String> balloon,
        Optional<String> designator,
        StepClass stepClass,
        Optional<Limits> limits,
        int places,
        Verdict verdict,
        Optional<Length> value,
        Optional<Disposed> disposed,
        Optional<Found> found,
        boolean asked) {

    /**
     * Who found something out, and when.
     *
     * @param gauge the one that was answered with; absent where none was set, and of a reading, which has it by itself
     */
    public record Found(String by, OffsetDateTime at, Optional<GaugeMark> gauge) {}

    /** A disposition and who signed it. */
    public record Disposed(Disposition disposition, String signedBy) {}
}
