package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.tolerance.Limits;

/** <em>plug-fit</em>: a measured plug in a bore measured before, and what the hand feels. */
final class PlugFitKind implements StepKind {

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Integer> boreStep = soFar.earlier(keys, "bore_step", StepKinds.BORE);
        Optional<Limits> clearance = LimitRules.OF_A_CLEARANCE.read(keys, soFar.unit());
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        Optional<PlugFeel> feel = keys.word("feel", List.of(PlugFeel.values()), PlugFeel::key);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of("plug"));
        return keys.built(() -> new PlugFitCheck(
                boreStep.orElseThrow(), clearance.orElseThrow(), places, feel.orElseThrow(), means.orElseThrow()));
    }
}
