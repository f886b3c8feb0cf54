package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;

/**
 * The drawing a plan was made from.
 *
 * @param title what the shop calls it, and which sheets of it the plan is of
 * @param number absent where the plan does not say
 * @param revision of the drawing, apart from the one of the part; absent where the plan does not say
 * @param sheets how many there are; absent where the plan does not say
 * @param changes in force that are not drawn in yet, as they are numbered
 * @param file with its pages; absent where the plan names none
 */
public record DrawingInForce(
        String title,
        Optional<String> number,
        Optional<String> revision,
        Optional<Integer> sheets,
        List<String> changes,
        Optional<DrawingFile> file) {

    public DrawingInForce {
        changes = List.copyOf(changes);
    }

    /** Of which no more is known than what the shop calls it. */
    public static DrawingInForce titled(String title) {
        return new DrawingInForce(
                title, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());
    }
}
