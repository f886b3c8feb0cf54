package org.tenthwise.checklists.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeAbility;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;

/** What a step can refer to: what was read before it. Steps with problems are known by number and kind as well. */
final class PlanSoFar {

    /**
     * @param line where the step begins
     * @param check absent where it has problems
     */
    record Known(String kind, int line, Optional<Check> check) {}

    private final Unit unit;
    private final OperationRules.Known operations;
    private final Optional<Aim> aim;
    private final Optional<Outline> outline;
    private final boolean outlineGiven;
    private final Map<String, Optional<Uncertainty>> uncertainties;
    private final List<GaugeAbility> gauges;
    private final Map<Integer, Known> steps = new LinkedHashMap<>();
    private Optional<Integer> inHand = Optional.empty();
    private Optional<Origin> origin = Optional.empty();

    /** @param outlineGiven whether the file has an outline, sound or not */
    PlanSoFar(
            Unit unit,
            OperationRules.Known operations,
            Optional<Aim> aim,
            Optional<Outline> outline,
            boolean outlineGiven,
            Map<String, Optional<Uncertainty>> uncertainties,
            List<GaugeAbility> gauges) {
        this.unit = unit;
        this.operations = operations;
        this.aim = aim;
        this.outline = outline;
        this.outlineGiven = outlineGiven;
        this.uncertainties = Map.copyOf(uncertainties);
        this.gauges = List.copyOf(gauges);
    }

    Unit unit() {
        return unit;
    }

    List<Operation> operations() {
        return operations.operations();
    }

    /** The step read next belongs to that operation. */
    void in(Optional<Integer> operation) {
        inHand = operation;
    }

    /** What holds of the next cut where the step in hand says nothing. */
    Cutting usualCutting() {
        Cutting cutting = inHand.map(operations.cutting()::get).orElse(Cutting.UNSAID);
        return new Cutting(aim, cutting.leastCut(), cutting.offsetStep());
    }

    /** The limits of the step read next come of that, where it does not write them out. */
    void limitsFrom(Optional<Origin> worked) {
        origin = worked;
    }

    /** {@code limits} of the step in hand, with what they come of. */
    Limits from(Limits limits) {
        return origin.map(from -> new Limits(limits.lower(), limits.upper(), Optional.of(from)))
                .orElse(limits);
    }

    Optional<Outline> outline() {
        return outline;
    }

    boolean outlineGiven() {
        return outlineGiven;
    }

    /** Ways of measuring by name, with how sure each is. */
    Map<String, Optional<Uncertainty>> uncertainties() {
        return uncertainties;
    }

    /** The kinds of gauge there are, with what each can make. */
    List<GaugeAbility> gauges() {
        return gauges;
    }

    Optional<Known> step(int number) {
        return Optional.ofNullable(steps.get(number));
    }

    void add(int number, Known step) {
        steps.putIfAbsent(number, step);
    }

    /** The number under {@code key}, if it is that of an earlier step of {@code kind}. */
    Optional<Integer> earlier(TableKeys keys, String key, String kind) {
        return keys.whole(key).filter(number -> {
            Optional<Known> step = step(number);
            if (step.isEmpty()) {
                keys.problem(key, "plan.step.not-before", key, number);
            } else if (!step.get().kind().equals(kind)) {
                keys.problem(
                        key, "plan.step.other-kind", key, number, step.get().kind(), kind);
            }
            return step.filter(known -> known.kind().equals(kind)).isPresent();
        });
    }
}
