package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Feature.Form;
import org.tenthwise.model.plan.Feature.Side;

/**
 * {@code feature} of a size: one of the words that are known, or one of the plan's own, which says by {@code shape} how
 * it is cut; and {@code side}, where the word leaves that open.
 */
final class FeatureRules {

    private static final String FEATURE = "feature";
    private static final String SHAPE = "shape";
    private static final String SIDE = "side";
    private static final String EITHER = "either";

    private FeatureRules() {}

    static Optional<Feature> read(TableKeys keys) {
        Optional<String> word = keys.text(FEATURE);
        Optional<Feature> known = word.flatMap(Feature::known);
        Optional<Form> shape = keys.ifAny(SHAPE, key -> keys.word(key, List.of(Form.values()), Form::key));
        Optional<String> said = keys.ifAny(
                SIDE, key -> keys.word(key, List.of(Side.INSIDE.key(), Side.OUTSIDE.key(), EITHER), side -> side));
        Optional<Side> side = said.flatMap(FeatureRules::side);
        known.ifPresent(feature -> judge(keys, feature, shape, said));
        if (word.isPresent() && known.isEmpty() && !keys.has(SHAPE)) {
            keys.problem(
                    FEATURE,
                    "plan.feature.no-shape",
                    word.get(),
                    TableKeys.quoted(Feature.KNOWN.stream().map(Feature::key).toList()),
                    TableKeys.quoted(
                            List.of(Form.values()).stream().map(Form::key).toList()));
        }
        Optional<Form> form = known.map(Feature::form).or(() -> shape);
        Optional<Side> lies = known.flatMap(Feature::side).or(() -> side);
        form.filter(of -> of.hasTwoSides() && lies.isEmpty())
                .ifPresent(of -> keys.problem(keys.has(SIDE) ? SIDE : FEATURE, "plan.feature.no-side", of.key()));
        form.filter(of -> of.isOfAnEdge() && lies.isPresent())
                .ifPresent(of -> keys.problem(SIDE, "plan.feature.of-an-edge", of.key()));
        return word.flatMap(named -> form.flatMap(of -> keys.built(
                () -> known.filter(plain -> plain.side().isPresent()).orElseGet(() -> new Feature(named, of, lies)))));
    }

    /** What its word says already need not be said again, and cannot be said otherwise. */
    private static void judge(TableKeys keys, Feature known, Optional<Form> shape, Optional<String> side) {
        shape.filter(other -> other != known.form())
                .ifPresent(other -> keys.problem(
                        SHAPE,
                        "plan.feature.other-shape",
                        known.key(),
                        known.form().key(),
                        other.key()));
        known.side()
                .map(Side::key)
                .filter(lies -> side.filter(other -> !other.equals(lies)).isPresent())
                .ifPresent(lies -> keys.problem(SIDE, "plan.feature.other-side", known.key(), lies, side.orElse("")));
    }

    private static Optional<Side> side(String word) {
        return List.of(Side.values()).stream()
                .filter(side -> side.key().equals(word))
                .findFirst();
    }

    /** By what words a gauge is known to make it: its own, or that of what is measured alike. */
    static List<String> readings(Feature feature) {
        return List.of(feature.key(), likeness(feature));
    }

    private static String likeness(Feature feature) {
        return switch (feature.form()) {
            case TURNED, HOLE -> feature.isInside() ? Feature.BORE.key() : Feature.DIAMETER.key();
            case FACES -> feature.isInside() ? Feature.WIDTH.key() : "thickness";
            case LENGTH -> feature.isInside() ? Feature.DEPTH.key() : "length";
            case CHAMFER, RADIUS -> feature.form().key();
        };
    }
}
