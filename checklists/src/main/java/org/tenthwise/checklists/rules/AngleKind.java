package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** <em>angle</em>: between limits, or a nominal angle with what it may be out by on either side. */
final class AngleKind implements StepKind {

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        SizeRules rules = new SizeRules(keys, AngleLimitRules.MARKED);
        Optional<Limits> limits = AngleLimitRules.read(keys).map(soFar::from);
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        int readingsEach = rules.readingsEach();
        Optional<SizeModifier> drawingSays = rules.drawingSays();
        Combine combine = rules.combine(places, readingsEach, drawingSays);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of(AngleCheck.KEY), QuantityKind.ANGLE);
        Written guardBand = rules.guardBand(limits, means.flatMap(Check.Means::uncertainty));
        return keys.built(() -> {
            Unit unit = AngleLimitRules.unit(limits.orElseThrow(), guardBand);
            return new AngleCheck(
                    AngleLimitRules.in(unit, limits.orElseThrow()),
                    places,
                    readingsEach,
                    combine,
                    Written.of(guardBand.length().in(unit), unit),
                    means.orElseThrow(),
                    drawingSays);
        });
    }
}
