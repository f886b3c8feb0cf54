package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Room for the readings of a run-out at one section: the highest and the lowest over a full turn, and a reading at every angle.
 *
 * @param section absent where the plan names none
 * @param byAngle in the order they come under the needle
 */
public record Round(Optional<Section> section, Slot highest, Slot lowest, List<Slot> byAngle) {

    public Round {
        byAngle = List.copyOf(byAngle);
    }

    /** The two slots of a full turn. */
    public List<Slot> sweep() {
        return List.of(highest, lowest);
    }

    /** All of them, the sweep first. */
    public Stream<Slot> slots() {
        return Stream.concat(sweep().stream(), byAngle.stream());
    }
}
