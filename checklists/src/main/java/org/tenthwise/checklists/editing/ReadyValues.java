package org.tenthwise.checklists.editing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.checklists.rules.PlanChoices;

/**
 * What is offered for a key of a step, so that nothing need be typed twice: what stands there, what the steps of the
 * same kind before it have, what the other steps have, and what a plan can say there at all.
 */
public final class ReadyValues {

    private static final String KIND = "kind";
    private static final int MOST = 40;

    private final PlanText plan;

    public ReadyValues(PlanText plan) {
        this.plan = plan;
    }

    /** Values as they are written, the likeliest first, none twice. */
    public List<String> of(String key, int place) {
        List<TableText> steps = plan.list("step");
        TableText here = steps.get(place);
        Set<String> offered = new LinkedHashSet<>();
        here.value(key).ifPresent(offered::add);
        List<String> words =
                PlanChoices.of(key, reading(here)).stream().map(TomlValue::text).toList();
        if (!isItsOwn(key)) {
            alike(steps, here, place, words.isEmpty())
                    .forEach(step -> step.value(key).ifPresent(offered::add));
        }
        offered.addAll(words);
        if (key.equals("operation")) {
            plan.list(key).forEach(operation -> operation.value("number").ifPresent(offered::add));
        }
        return offered.stream().limit(MOST).toList();
    }

    private static List<String> reading(TableText step) {
        return Stream.of("feature", KIND)
                .flatMap(key -> step.says(key).stream())
                .toList();
    }

    /** What no two steps have in common. */
    private static boolean isItsOwn(String key) {
        return List.of("balloon", "requirement", "drawing", "name", "lower", "upper", "nominal", "hold", KIND)
                .contains(key);
    }

    /**
     * Those of the same kind, the nearest before first.
     *
     * @param others whether all others come behind them
     */
    private static Stream<TableText> alike(List<TableText> steps, TableText here, int place, boolean others) {
        List<TableText> nearest = new ArrayList<>();
        for (int before = place - 1; before >= 0; before--) {
            nearest.add(steps.get(before));
        }
        nearest.addAll(steps.subList(place + 1, steps.size()));
        Optional<String> kind = here.value(KIND);
        return Stream.concat(
                nearest.stream().filter(step -> step.value(KIND).equals(kind)),
                nearest.stream().filter(step -> others && !step.value(KIND).equals(kind)));
    }
}
