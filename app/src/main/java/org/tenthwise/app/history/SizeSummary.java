package org.tenthwise.app.history;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.model.quantity.Length;

/**
 * What a series over parts needs of one step that is judged by a size, beside its {@link StepSummary}. Nothing that was
 * struck out is in it.
 *
 * @param operation number of the operation
 * @param followedBy what tells it from others of the part number, over all issues of the plan
 * @param kind the word plans have for what is checked
 * @param requirement words of the drawing
 * @param asCut of the first pass read to its end since metal last came off; absent while there is none
 * @param last of the pass in hand; absent while it is not read to its end
 * @param cuts how often metal came off after the first pass
 * @param farOff whether a reading behind it is far off what is expected
 * @param conceded whether it is settled by concession, or after a repair
 * @param expanded uncertainty at k = 2; absent where the plan names none
 * @param entry place in the ledger of the last reading behind the size as it was cut; for what is worked out of other
 *     steps that of theirs
 * @param at when that was
 * @param lastEntry place in the ledger of the last reading behind the size in hand
 * @param people who read it, each once
 * @param gauges it was read with, each once
 */
public record SizeSummary(
        int operation,
        FollowedBy followedBy,
        String kind,
        String requirement,
        Bounds bounds,
        Optional<PartSize> asCut,
        Optional<PartSize> last,
        int cuts,
        boolean farOff,
        boolean conceded,
        Optional<Length> expanded,
        long entry,
        OffsetDateTime at,
        long lastEntry,
        List<String> people,
        List<GaugeMark> gauges) {

    /** What tells a characteristic from others of its part number. */
    public enum FollowedBy {
        /** No other step is of its balloon. */
        BALLOON,
        /** Several steps are of one balloon. */
        BALLOON_AND_NAME,
        /** The plan names no balloon of it. */
        NUMBER_AND_NAME
    }

    /** What its limits are to the size. */
    public enum Bounds {
        /** As the drawing has them. */
        PLAIN,
        /** None is below zero, and zero is best: a run-out, how far readings lie apart. */
        FROM_ZERO,
        /** What is allowed hangs on another size of the part. */
        MOVING
    }

    public SizeSummary {
        people = List.copyOf(people);
        gauges = List.copyOf(gauges);
    }
}
