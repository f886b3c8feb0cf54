package org.tenthwise.checklists.editing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.checklists.rules.PlanChoices;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Refused;

/**
 * What other checks answer to all that a step lacks at once, for a person to take or leave: those of the same kind and
 * feature, with the same kind of gauge. Limits, masters, wires, datums and whatever else belongs to one feature alone
 * are never among it.
 */
public final class AnswersAlike {

    private static final int MOST = 4;
    /** Fewer are as quickly chosen one by one. */
    private static final int FEWEST = 2;

    private static final Set<String> SHARED = Set.of("operation", "places", "gauge_kind", "method");

    private final PlanText plan;
    private final List<TableText> steps;

    /**
     * What another check answers.
     *
     * @param step that check
     * @param values as they are written, by their keys
     */
    public record Answers(TableText step, Map<String, String> values) {}

    /** What a step is about, by its own words or by those of the drawing. */
    private record About(Optional<String> kind, Optional<String> feature, Optional<String> gauge) {}

    public AnswersAlike(PlanText plan) {
        this.plan = plan;
        this.steps = plan.list("step");
    }

    /** The kind of gauge of a step, said or usual for what is drawn; absent where neither is. */
    public Optional<String> gauge(int place) {
        return about(steps.get(place)).gauge();
    }

    /**
     * The nearest before first, none twice.
     *
     * @param missing keys that the step at {@code place} lacks
     */
    public List<Answers> of(int place, List<String> missing) {
        List<String> shared = missing.stream().filter(SHARED::contains).toList();
        About here = about(steps.get(place));
        if (shared.size() < FEWEST || here.kind().isEmpty()) {
            return List.of();
        }
        List<Answers> all = new ArrayList<>();
        Set<Map<String, String>> told = new HashSet<>();
        nearest(place)
                .filter(other -> goesWith(here, other, shared))
                .map(other -> new Answers(other, values(other, shared)))
                .filter(answers -> answers.values().size() == shared.size() && told.add(answers.values()))
                .limit(MOST)
                .forEach(all::add);
        return all;
    }

    /** Where the gauge is still to be said, that of the other is among the answers. */
    private boolean goesWith(About here, TableText step, List<String> shared) {
        About other = about(step);
        return here.kind().equals(other.kind())
                && here.feature().equals(other.feature())
                && (shared.contains("gauge_kind") || here.gauge().equals(other.gauge()));
    }

    private static Map<String, String> values(TableText step, List<String> keys) {
        Map<String, String> values = new LinkedHashMap<>();
        keys.forEach(key -> step.value(key).ifPresent(value -> values.put(key, value)));
        return values;
    }

    private Stream<TableText> nearest(int place) {
        List<TableText> before = new ArrayList<>();
        for (int at = place - 1; at >= 0; at--) {
            before.add(steps.get(at));
        }
        return Stream.concat(before.stream(), steps.subList(place + 1, steps.size()).stream());
    }

    private About about(TableText step) {
        Optional<CalloutPart> drawn = step.says("requirement").flatMap(this::drawn);
        Optional<String> kind = step.says("kind");
        Optional<CalloutPart> goesOn = drawn.filter(part -> kind.isEmpty() || kind.equals(PlanChoices.kindOf(part)));
        return new About(
                kind.or(() -> drawn.flatMap(PlanChoices::kindOf)),
                step.says("feature").or(() -> goesOn.flatMap(PlanChoices::featureOf)),
                step.says("gauge_kind").or(() -> goesOn.flatMap(PlanChoices::gaugeOf)));
    }

    /** Its only part; of several the step says itself which it is. */
    private Optional<CalloutPart> drawn(String requirement) {
        try {
            return plan.head()
                    .says("unit")
                    .flatMap(Unit::ofSymbol)
                    .map(unit -> reader(unit).read(requirement).parts())
                    .filter(parts -> parts.size() == 1)
                    .map(parts -> parts.get(0));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private CalloutReader reader(Unit unit) {
        return new CalloutReader(unit, plan.head().says("tolerance").map(text -> GeneralTolerance.ofText(text, unit)));
    }
}
