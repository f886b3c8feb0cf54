package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.tolerance.Limits;

/**
 * One step of a plan.
 *
 * @param number its place in the order of work; unique in the plan. What stands in the balloon of the drawing is apart
 * @param operation number of the operation it belongs to
 * @param name short, for lists: what is checked
 * @param drawing what the drawing says of it, and where
 * @param method how and where to measure, for the person at the machine
 * @param caution what can hurt here; absent if nothing but the usual
 * @param hold hold point: nothing after this step is open until the steps named here have passed or are conceded; empty
 *     if this step is no hold point
 * @param mark where on the outline the characteristic sits
 * @param temperatureAsked never where the plan says nothing of heat
 * @param stepClass whether it is a characteristic of the drawing; only those are counted in the outcome
 * @param clamping whether the part is read held or let go; absent where the plan does not say
 * @param when for which pieces of a lot it is asked; absent where it is asked of each
 */
public record Step(
        int number,
        int operation,
        String name,
        OnDrawing drawing,
        String method,
        Optional<String> caution,
        List<Integer> hold,
        Optional<Mark> mark,
        Check check,
        TemperatureAsked temperatureAsked,
        StepClass stepClass,
        Optional<Clamping> clamping,
        Optional<WhenAsked> when) {

    public Step {
        hold = List.copyOf(hold);
    }

    /** Whether it is a characteristic: a requirement of the drawing. */
    public boolean isOfDrawing() {
        return stepClass == StepClass.DRAWING;
    }

    /** The limits it is judged against; absent for one that only asks. */
    public Optional<Limits> limits() {
        return check.judgedAgainst();
    }

    /** The same with another check. */
    public Step with(Check other) {
        return new StepBuilder(this).check(other).build();
    }
}
