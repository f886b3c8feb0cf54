package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.TemperatureAsked;

/** What a plan can say under {@code temperature} of a step. */
final class TemperatureRules {

    private static final Map<String, TemperatureAsked> WORDS =
            Map.of("ask", TemperatureAsked.ALWAYS, "not-asked", TemperatureAsked.NEVER);

    private TemperatureRules() {}

    /**
     * Whether temperatures are asked for at a step of a kind that heat touches.
     *
     * @param check absent where it has problems
     */
    static TemperatureAsked read(TableKeys keys, boolean plannedFor, Optional<Check> check) {
        Optional<TemperatureAsked> written = keys.ifAny(
                        ClimateRules.KEY, key -> keys.word(key, List.of("ask", "not-asked"), word -> word))
                .map(WORDS::get);
        if (keys.has(ClimateRules.KEY) && !plannedFor) {
            keys.problem(ClimateRules.KEY, "plan.temperature.no-table");
        }
        boolean range = check.filter(of -> of.underWires().isEmpty())
                .flatMap(Check::asSize)
                .filter(size -> size.combine() == Combine.RANGE)
                .isPresent();
        if (range && written.filter(TemperatureAsked.ALWAYS::equals).isPresent()) {
            keys.problemUnlessKept(ClimateRules.KEY, "plan.temperature.range");
        }
        return plannedFor ? written.orElse(TemperatureAsked.WHERE_IT_MATTERS) : TemperatureAsked.NEVER;
    }
}
