package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.radius.ArcOverRolls;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;

/**
 * A radius over two equal rolls: beside a convex arc that stands on a plate, or lying in a concave one, where how far
 * its bottom is below the underside of the rolls is read too.
 *
 * @param roll its diameter, by its certificate
 * @param concave whether the rolls lie in the arc
 */
public record RollsAtArc(Written roll, boolean concave) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.ROLLS;
    }

    @Override
    public List<WorkedReading> readings() {
        return concave ? List.of(WorkedReading.OVER, WorkedReading.DROP) : List.of(WorkedReading.OVER);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.ROLL, roll));
    }

    @Override
    public Length of(List<Length> readings) {
        return (concave
                        ? ArcOverRolls.concave(roll.length(), readings.get(0), readings.get(1))
                        : ArcOverRolls.convex(roll.length(), readings.get(0)))
                .radius();
    }

    @Override
    public Optional<Length> reading(Length size) {
        return concave ? Optional.empty() : Optional.of(ArcOverRolls.over(roll.length(), size));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.rollsAtArc(this);
    }
}
