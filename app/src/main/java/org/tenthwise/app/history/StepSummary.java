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
 * @param limits without where they were taken from; absent for a step that only asks
 * @param places the size judged is written with
 * @param value the one size judged, where there is one
 * @param disposed the disposition in force, where there is one
 * @param found who read or answered last, and when, in whatever pass; absent where nobody did
 */
public record StepSummary(
        int number,
        String name,
        StepClass stepClass,
        Optional<Limits> limits,
        int places,
        Verdict verdict,
        Optional<Length> value,
        Optional<Disposed> disposed,
        Optional<Found> found) {

    /**
     * Who found something out, and when.
     *
     * @param gauge the one that was answered with; absent where none was set, and of a reading, which has it by itself
     */
    public record Found(String by, OffsetDateTime at, Optional<GaugeMark> gauge) {}

    /** A disposition and who signed it. */
    public record Disposed(Disposition disposition, String signedBy) {}
}
