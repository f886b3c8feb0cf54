package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** <em>scale</em>: a figure in a unit of its own between limits; of a roughness by a rule. */
final class ScaleKind implements StepKind {

    static final String UNIT = "unit";
    private static final String RULE = "rule";
    private static final String LOWER = "lower";
    private static final int MOST_BY_SIXTEEN_PERCENT = 12;
    private static final List<Unit> OF_ROUGHNESS = List.of(Unit.named("µm"), Unit.named("µin"));

    /** What a keyboard without µ writes. */
    private static final Map<String, String> PLAINLY = Map.of("um", "µm", "uin", "µin");

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Unit> unit = unit(keys);
        Optional<Limits> limits = LimitRules.OF_A_SIZE.read(keys, unit.orElse(soFar.unit()));
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        SizeRules rules = new SizeRules(keys, unit.orElse(soFar.unit()));
        int readingsEach = rules.readingsEach();
        Combine combine = rules.combine(places, readingsEach);
        Optional<Check.Means> means = MeansRules.read(
                keys, soFar, List.of(ScaleCheck.KEY), unit.orElse(soFar.unit()).kind());
        Written guardBand = rules.guardBand(limits, means.flatMap(Check.Means::uncertainty));
        Optional<AcceptanceRule> rule =
                keys.ifAny(RULE, key -> keys.word(key, List.of(AcceptanceRule.values()), AcceptanceRule::key));
        rule.ifPresent(by -> judge(keys, unit, limits, by, places));
        boolean bySteps = rule.filter(AcceptanceRule.SIXTEEN_PERCENT::equals).isPresent();
        return keys.built(() -> new ScaleCheck(
                limits.orElseThrow(),
                places,
                bySteps ? MOST_BY_SIXTEEN_PERCENT : readingsEach,
                bySteps ? Combine.SIXTEEN_PERCENT : combine,
                guardBand,
                means.orElseThrow(),
                rule));
    }

    /** The unit of a scale; absent where a problem was noted. */
    private static Optional<Unit> unit(TableKeys keys) {
        Optional<Unit> unit = read(keys);
        unit.filter(of -> !of.isOfScale())
                .ifPresent(of -> keys.problem(UNIT, "plan.scale.no-scale", of.symbol(), of.kind()));
        return unit.filter(Unit::isOfScale);
    }

    /** Any unit under the key. */
    static Optional<Unit> read(TableKeys keys) {
        return keys.text(UNIT).flatMap(name -> keys.sensible(UNIT, () -> Unit.named(PLAINLY.getOrDefault(name, name))));
    }

    private static void judge(
            TableKeys keys, Optional<Unit> unit, Optional<Limits> limits, AcceptanceRule rule, List<Place> places) {
        unit.filter(of -> !OF_ROUGHNESS.contains(of))
                .ifPresent(of -> keys.problem(RULE, "plan.scale.rule-of-roughness", rule.key(), of.symbol()));
        limits.filter(of -> of.lower().isPresent() || of.upper().isEmpty())
                .ifPresent(
                        of -> keys.problem(of.lower().isPresent() ? LOWER : RULE, "plan.scale.rule-upper", rule.key()));
        limits.flatMap(Limits::upper)
                .filter(upper -> upper.figure().compareTo(BigDecimal.ZERO) <= 0)
                .ifPresent(upper -> keys.problem("upper", "plan.above-zero", "upper", upper));
        if (rule == AcceptanceRule.SIXTEEN_PERCENT) {
            for (String other : List.of("combine", "readings_each", "guard_band")) {
                keys.ifAny(other, key -> {
                    keys.problem(key, "plan.scale.rule-says", key, rule.key());
                    return Optional.empty();
                });
            }
            if (places.size() > 1) {
                keys.problem("places", "plan.scale.rule-place", rule.key());
            }
        } else if (keys.has("combine")) {
            keys.problem("combine", "plan.scale.rule-says", "combine", rule.key());
        }
    }
}
