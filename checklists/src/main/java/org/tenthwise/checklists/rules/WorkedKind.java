package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.worked.WorkedBy;
import org.tenthwise.model.worked.WorkedWay;

/** <em>worked</em>: a size or an angle worked out of what is read at each place and of sizes that are given. */
final class WorkedKind implements StepKind {

    @Override
    public boolean feelsHeat() {
        return true;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<WorkedWay> way = keys.word("by", List.of(WorkedWay.values()), WorkedWay::key);
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of(WorkedCheck.KEY));
        if (way.isEmpty()) {
            WorkedByRules.KEYS.forEach(key -> keys.ifAny(key, any -> Optional.empty()));
            return Optional.empty();
        }
        Optional<WorkedBy> by = new WorkedByRules(keys, soFar.unit()).read(way.get());
        boolean angle = WorkedByRules.gives(way.get()).equals(QuantityKind.ANGLE);
        Unit unit = angle ? AngleLimitRules.MARKED : soFar.unit();
        SizeRules rules = new SizeRules(keys, unit);
        Optional<Limits> limits =
                (angle ? AngleLimitRules.read(keys) : LimitRules.OF_A_SIZE.readOfASize(keys, unit)).map(soFar::from);
        by.ifPresent(known -> limits.ifPresent(wanted -> judge(keys, known, wanted)));
        Optional<SizeModifier> drawingSays = rules.drawingSays();
        Combine combine = rules.combine(places, 1, drawingSays);
        Optional<Uncertainty> ofAReading = means.flatMap(Check.Means::uncertainty);
        Written guardBand = rules.guardBand(limits, Optional.empty());
        return keys.built(() -> {
            Unit own = angle ? AngleLimitRules.unit(limits.orElseThrow(), guardBand) : unit;
            return new WorkedCheck(
                    by.orElseThrow(),
                    angle ? AngleLimitRules.in(own, limits.orElseThrow()) : limits.orElseThrow(),
                    places,
                    combine,
                    Written.of(guardBand.length().in(own), own),
                    new Check.Means(
                            means.orElseThrow().kind(),
                            means.get().gauge(),
                            means.get().reference(),
                            Optional.empty(),
                            means.get().resolution()),
                    ofAReading,
                    drawingSays);
        });
    }

    /** Work in the middle of its limits can be read so; by what is given, it is somewhere off the flanks or the bar. */
    private static void judge(TableKeys keys, WorkedBy by, Limits limits) {
        if (limits.width().isEmpty()) {
            return;
        }
        try {
            Optional<Length> read = by.reading(limits.middle());
            read.ifPresent(reading -> by.of(List.of(reading)));
            if (read.isEmpty() && by.readings().size() == 1) {
                keys.problem("by", "plan.worked.no-reading", by.way().key());
            }
        } catch (IllegalArgumentException e) {
            keys.problem("by", "plan.sensible", Explained.why(e));
        }
    }
}
