package org.tenthwise.checklists.editing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The order of operations in a plan: those of a route rise, and the checks of each stand together. */
final class OperationOrder {

    private static final String OPERATION = "operation";
    private static final String STEP = "step";

    private final PlanText plan;

    OperationOrder(PlanText plan) {
        this.plan = plan;
    }

    /**
     * With the operation of a step as one of the plan, if it is none yet.
     *
     * @param name what it is called
     */
    PlanText withThatOf(int place, String name) {
        OptionalInt number = number(plan.list(STEP).get(place), OPERATION);
        List<TableText> known = plan.list(OPERATION);
        if (number.isEmpty()
                || known.isEmpty()
                || known.stream()
                        .anyMatch(operation -> number(operation, "number").equals(number))) {
            return plan;
        }
        int before = (int) known.stream()
                .filter(operation -> number(operation, "number").orElse(0) < number.getAsInt())
                .count();
        return plan.inserted(
                OPERATION,
                before,
                TableText.ofList(OPERATION)
                        .with("number", TomlValue.number(number.getAsInt()))
                        .with("name", TomlValue.text(name)));
    }

    /**
     * Where a step belongs once it was moved: where it is, or before the first check of a later operation, or behind
     * the last of an earlier one.
     */
    int placeOf(int place) {
        List<TableText> steps = plan.list(STEP);
        OptionalInt own = number(steps.get(place), OPERATION);
        if (own.isEmpty()) {
            return place;
        }
        IntPredicate isLater = at -> number(steps.get(at), OPERATION).orElse(0) > own.getAsInt();
        int first = IntStream.range(0, place).filter(isLater).findFirst().orElse(place);
        if (first < place) {
            return first;
        }
        return IntStream.range(place + 1, steps.size())
                .filter(at -> number(steps.get(at), OPERATION).orElse(Integer.MAX_VALUE) < own.getAsInt())
                .reduce((before, last) -> last)
                .orElse(place);
    }

    private static OptionalInt number(TableText table, String key) {
        Optional<String> number = table.value(key).filter(text -> text.matches("[1-9]\\d{0,8}"));
        return number.map(text -> OptionalInt.of(Integer.parseInt(text))).orElse(OptionalInt.empty());
    }
}
