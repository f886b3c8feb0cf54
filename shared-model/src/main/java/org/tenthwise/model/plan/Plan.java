package org.tenthwise.model.plan;

import java.util.HashSet;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/**
 * One part's check plan.
 *
 * @param issue issue of the plan itself, apart from the revision of the drawing
 * @param name what the shop calls the part
 * @param material designation and condition
 * @param drawing drawing the limits were taken from
 * @param route number of the route or planning sheet the part is made by, with its issue; absent if the plan does not
 *     say
 * @param unit what lengths are written in
 * @param remark a sentence for every screen and record of the part; empty if there is none
 * @param operations in the order they are done; not empty
 * @param steps in the order they are done, numbers rising; not empty
 * @param source the text the plan was read from
 * @param climate what it says of heat; absent if it says nothing, and then nothing is corrected
 * @param lotAsked whether no run begins before the material lot was given, or no lot was chosen on purpose
 * @param issues why and by whom it was issued, the issue in force last; empty where the plan does not say
 */
public record Plan(
        PartId part,
        String issue,
        String name,
        String material,
        DrawingInForce drawing,
        Optional<String> route,
        Unit unit,
        String remark,
        List<Operation> operations,
        List<Step> steps,
        Optional<Outline> outline,
        PlanSource source,
        Optional<ThermalData> climate,
        boolean lotAsked,
        List<IssueOfPlan> issues) {

    public Plan {
        issues = List.copyOf(issues);
        operations = List.copyOf(operations);
        steps = List.copyOf(steps);
        if (operations.isEmpty() || steps.isEmpty()) {
            throw new IllegalArgumentException("A plan has at least one operation and one step");
        }
        Set<Integer> numbers = new HashSet<>();
        for (Step step : steps) {
            if (!numbers.add(step.number())) {
                throw new IllegalArgumentException("Step %s stands in the plan twice".formatted(step.number()));
            }
        }
    }

    /** The issue in force: why and by whom there is one; absent where the plan does not say. */
    public Optional<IssueOfPlan> issued() {
        return issues.stream().reduce((before, after) -> after);
    }

    /** Whether any step says which balloon of the drawing it is of. */
    public boolean isBallooned() {
        return steps.stream().anyMatch(step -> step.drawing().balloon().isPresent());
    }

    /**
     * The balloon of the drawing that {@code step} is of. In a plan that names no balloon at all it is the number of
     * the step; in one that does, it is absent for a step that names none.
     */
    public Optional<BalloonNumber> balloon(Step step) {
        return step.drawing()
                .balloon()
                .or(() -> isBallooned() ? Optional.empty() : Optional.of(BalloonNumber.of(step.number())));
    }

    /**
     * What is read at {@code step} is written in: the unit of its limits, or that of the plan where it has none or is
     * worked out of lengths.
     */
    public Unit unit(Step step) {
        return step.limits()
                .map(Limits::unit)
                .filter(any -> step.check().asWorked().isEmpty())
                .orElse(unit);
    }

    /** What is read in a slot of {@code step} is written in. */
    public Unit unit(Step step, Slot slot) {
        return step.check().unit(slot).orElseGet(() -> unit(step));
    }

    /** @throws NoSuchElementException if the plan has no such step */
    public Step step(int number) {
        return steps.stream()
                .filter(step -> step.number() == number)
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("The plan has no step " + number));
    }

    /** @throws NoSuchElementException if the plan has no such operation */
    public Operation operation(int number) {
        return operations.stream()
                .filter(operation -> operation.number() == number)
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("The plan has no operation " + number));
    }
}
