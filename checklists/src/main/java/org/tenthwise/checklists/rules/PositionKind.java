package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Word;

/** <em>position</em>: axes of holes or pins in a round zone, with what their size adds to it. */
final class PositionKind implements StepKind {

    private static final String ZONE = "zone";
    private static final String MODIFIER = "modifier";
    private static final String SIZE_STEP = "size_step";
    private static final String ENDS = "ends";
    private static final String READ = "read";
    private static final String OF_DIRECTION = "uncertainty_of_angle";
    private static final int MOST_ENDS = 2;

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Written> zone = keys.figure(ZONE, soFar.unit());
        MaterialModifier modifier = keys.ifAny(
                        MODIFIER, key -> keys.word(key, List.of(MaterialModifier.values()), Word::of))
                .orElse(MaterialModifier.NONE);
        boolean bonus = modifier != MaterialModifier.NONE;
        zone.filter(width -> width.figure().signum() < (bonus ? 0 : 1))
                .ifPresent(width -> keys.problem(ZONE, bonus ? "plan.position.zone" : "plan.above-zero", ZONE, width));
        Optional<Sized> sized = bonus ? sized(keys, soFar, modifier) : Optional.empty();
        if (!bonus && keys.has(SIZE_STEP)) {
            keys.problem(SIZE_STEP, "plan.position.no-modifier");
            keys.any(SIZE_STEP);
        }
        PositionReading by = keys.ifAny(READ, key -> keys.word(key, List.of(PositionReading.values()), Word::of))
                .orElse(PositionReading.X_AND_Y);
        List<TruePlace> holes = new TruePlaceRules(soFar.unit()).read(keys);
        if (by == PositionReading.POLAR && holes.stream().anyMatch(TruePlace::isOnTheAxis)) {
            keys.problem(READ, "plan.position.on-the-axis");
        }
        List<String> ends = ends(keys);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of(PositionCheck.KEY));
        if (by == PositionReading.POLAR) {
            MeansRules.readsToo(keys, soFar, means, List.of(PositionCheck.KEY, AngleCheck.KEY));
        }
        Optional<Uncertainty> ofDirection = ofDirection(keys, soFar, by);
        return keys.built(() -> new PositionCheck(
                zone.orElseThrow(),
                modifier,
                sized.map(Sized::feature).orElse(FeatureOfSize.HOLE),
                sized.map(Sized::step),
                by,
                holes,
                ends,
                means.orElseThrow(),
                ofDirection));
    }

    /** How sure an angle is; with X and Y there is none, and nothing to be sure of. */
    private static Optional<Uncertainty> ofDirection(TableKeys keys, PlanSoFar soFar, PositionReading by) {
        if (by == PositionReading.X_AND_Y && keys.has(OF_DIRECTION)) {
            keys.problem(OF_DIRECTION, "plan.position.no-angle");
            keys.any(OF_DIRECTION);
            return Optional.empty();
        }
        return UncertaintyRules.named(keys, OF_DIRECTION, soFar.uncertainties(), QuantityKind.ANGLE);
    }

    private record Sized(int step, FeatureOfSize feature) {}

    /** The step that measures the size: a size of a hole or a pin with the limit that the bonus counts from. */
    private static Optional<Sized> sized(TableKeys keys, PlanSoFar soFar, MaterialModifier modifier) {
        Optional<Integer> number = keys.whole(SIZE_STEP);
        Optional<PlanSoFar.Known> step = number.flatMap(soFar::step);
        if (number.isPresent() && step.isEmpty()) {
            keys.problem(SIZE_STEP, "plan.step.not-before", SIZE_STEP, number.get());
        }
        return step.flatMap(PlanSoFar.Known::check).flatMap(check -> {
            Optional<CheckOfSize> size = (check.underWires().isPresent()
                            ? Optional.<CheckOfSize>empty()
                            : check.asSize())
                    .filter(of -> of.combine() != Combine.RANGE);
            Optional<Feature.Side> side = size.map(CheckOfSize::feature)
                    .filter(of -> of.form().hasTwoSides())
                    .flatMap(Feature::side);
            if (side.isEmpty()) {
                keys.problem(SIZE_STEP, "plan.position.no-size", number.orElseThrow(), check.key());
                return Optional.empty();
            }
            FeatureOfSize feature = side.get() == Feature.Side.OUTSIDE ? FeatureOfSize.SHAFT : FeatureOfSize.HOLE;
            Limit from = modifier.countsFromLeast(feature) ? Limit.LOWER : Limit.UPPER;
            if (size.orElseThrow().limits().at(from).isEmpty()) {
                keys.problem(SIZE_STEP, "plan.position.no-limit", number.orElseThrow(), from);
            }
            return Optional.of(new Sized(number.orElseThrow(), feature));
        });
    }

    /** None where the plan says nothing of them, or where a problem was noted. */
    private static List<String> ends(TableKeys keys) {
        List<String> ends = keys.has(ENDS) ? PlaceRules.names(keys, ENDS) : List.of();
        if (ends.size() > MOST_ENDS) {
            keys.problem(ENDS, "plan.position.ends", ends.size());
        }
        return ends;
    }
}
