package org.tenthwise.model.run;

import java.util.List;
import java.util.Optional;

/**
 * What is said of a run before it begins: as an {@link Occasion}, but the earlier run only by its id.
 *
 * @param baseline id of the run it stands on; empty where there is none
 * @param affected numbers of the steps a partial first article is about, or that are measured again; empty for what the
 *     issues of the plan say, and for what the earlier run had
 */
public record OccasionSaid(
        Purpose purpose,
        String baseline,
        String reason,
        Optional<Integer> piece,
        List<Integer> affected,
        String order,
        List<String> changes) {

    /** Nobody said anything. */
    public static final OccasionSaid NOTHING =
            new OccasionSaid(Purpose.NOT_STATED, "", "", Optional.empty(), List.of(), "", List.of());

    public OccasionSaid {
        affected = List.copyOf(affected);
        changes = List.copyOf(changes);
    }

    /** The same for that reason. */
    public OccasionSaid because(String why) {
        return new OccasionSaid(purpose, baseline, why, piece, affected, order, changes);
    }

    /**
     * What the run keeps.
     *
     * @param standsOn the run named; absent where none is
     * @param about numbers of the steps it is about; empty where it is about no some
     */
    public Occasion on(Optional<Baseline> standsOn, List<Integer> about) {
        return new Occasion(purpose, standsOn, reason, piece, about, order, changes);
    }
}
