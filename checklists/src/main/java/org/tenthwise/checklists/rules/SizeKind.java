package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * <em>size</em> of a feature that the step names; <em>bore</em>, <em>width</em>, <em>diameter</em>, <em>depth</em> for
 * short: a plain size between limits.
 */
final class SizeKind implements StepKind {

    private final Function<TableKeys, Optional<Feature>> of;

    private SizeKind(Function<TableKeys, Optional<Feature>> of) {
        this.of = of;
    }

    /** Of the feature that the step names. */
    static SizeKind ofAny() {
        return new SizeKind(FeatureRules::read);
    }

    static SizeKind of(Feature feature) {
        return new SizeKind(keys -> Optional.of(feature));
    }

    @Override
    public boolean feelsHeat() {
        return true;
    }

    /** Of a feature that has problems the rest is read as if it were a length, and comes to nothing. */
    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Feature> named = of.apply(keys);
        Feature feature = named.orElse(Feature.LENGTH);
        SizeRules rules = new SizeRules(keys, soFar.unit());
        Optional<Limits> limits = ZoneRules.given(keys)
                ? ZoneRules.read(keys, soFar.unit(), feature)
                : LimitRules.OF_A_SIZE.readOfASize(keys, soFar.unit()).map(soFar::from);
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        int readingsEach = rules.readingsEach();
        Optional<SizeModifier> drawingSays = rules.drawingSays();
        Combine combine = rules.combine(places, readingsEach, drawingSays);
        boolean cutAgain =
                rules.cutAgain(feature.key(), feature.side().map(Feature.Side::stillCutBeyond), limits, combine);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, FeatureRules.readings(feature));
        Written guardBand = rules.guardBand(limits, means.flatMap(Check.Means::uncertainty));
        Cutting cutting = CuttingRules.ofStep(keys, soFar.unit(), cutAgain, limits, guardBand, soFar.usualCutting());
        Contact contact = ContactRules.read(keys, feature, soFar, limits, combine);
        return keys.built(() -> new SizeCheck(
                named.orElseThrow(),
                limits.orElseThrow(),
                places,
                readingsEach,
                combine,
                cutAgain,
                guardBand,
                means.orElseThrow(),
                cutting,
                drawingSays,
                contact));
    }
}
