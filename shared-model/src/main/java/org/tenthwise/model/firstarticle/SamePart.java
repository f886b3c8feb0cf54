package org.tenthwise.model.firstarticle;

import java.util.List;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;

/** What several runs of one part find of it together: what one leaves out, another may ask for. */
final class SamePart {

    private SamePart() {}

    /** Whether another run of the part that the run in {@code column} is of asks for what that leaves out. */
    static boolean asks(List<Sheet> runs, int column, Line left) {
        Plan plan = runs.get(column).plan();
        return runs.stream()
                .filter(other -> isOfOnePart(other, runs.get(column)))
                .flatMap(other -> other.lines().stream()
                        .filter(line -> other.plan().balloon(line.step()).equals(plan.balloon(left.step()))))
                .anyMatch(line ->
                        line.asked() && line.step().name().equals(left.step().name()));
    }

    /** A part is told by its serial and its lot; without a serial no two runs are known to be of the same. */
    private static boolean isOfOnePart(Sheet one, Sheet other) {
        Event.Begun here = one.run().begun();
        Event.Begun there = other.run().begun();
        return one == other
                || !here.serial().isBlank()
                        && here.serial().equals(there.serial())
                        && here.lot().equals(there.lot());
    }
}
