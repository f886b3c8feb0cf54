package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
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

/** <em>bore</em>, <em>width</em>, <em>diameter</em>, <em>depth</em>: a plain size between limits. */
final class SizeKind implements StepKind {

    private final Feature feature;
    private final List<GaugeKind> able;

    SizeKind(Feature feature, List<GaugeKind> able) {
        this.feature = feature;
        this.able = able;
    }

    @Override
    public boolean feelsHeat() {
        return true;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        String word = feature.key();
        SizeRules rules = new SizeRules(keys, soFar.unit());
        Optional<Limits> limits = ZoneRules.given(keys)
                ? ZoneRules.read(keys, soFar.unit(), feature)
                : LimitRules.OF_A_SIZE.readOfASize(keys, soFar.unit());
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        int readingsEach = rules.readingsEach();
        Optional<SizeModifier> drawingSays = rules.drawingSays();
        Combine combine = rules.combine(places, readingsEach, drawingSays);
        boolean cutAgain = rules.cutAgain(word, feature.stillCutBeyond(), limits, combine);
        Optional<Check.Means> means = MeansRules.read(keys, soFar, word, able);
        Written guardBand = rules.guardBand(limits, means.flatMap(Check.Means::uncertainty));
        Cutting cutting = CuttingRules.ofStep(keys, soFar.unit(), cutAgain, limits, guardBand, soFar.usualCutting());
        Contact contact = ContactRules.read(keys, feature, soFar, limits, combine);
        return keys.built(() -> new SizeCheck(
                feature,
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
