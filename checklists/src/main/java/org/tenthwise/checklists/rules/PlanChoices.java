package org.tenthwise.checklists.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.gauge.GaugeAbility;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.words.Word;

/** What can be chosen under those keys of a step that take one of a few words. */
public final class PlanChoices {

    private PlanChoices() {}

    /**
     * The words there are, in the order they are thought of; none for a key that takes anything.
     *
     * @param reading words for what the step reads, its kind among them; empty where it has none yet
     */
    public static List<String> of(String key, List<String> reading) {
        return switch (key) {
            case "kind" -> new StepKinds().names();
            case "class" -> words(StepClass.values(), Word::of);
            case "clamping" -> words(Clamping.values(), Word::of);
            case "cut_again" -> words(CutAgain.values(), CutAgain::word);
            case "gauge_kind" -> gauges(reading);
            default -> List.of();
        };
    }

    /** The kind of check that follows from a part of a callout; absent where it can be meant in two ways. */
    public static Optional<String> kindOf(CalloutPart part) {
        return CheckOfCallout.kind(part);
    }

    /** The kind of gauge that follows from a part of a callout where a step says none; absent where none is usual. */
    public static Optional<String> gaugeOf(CalloutPart part) {
        return CheckOfCallout.gauge(part);
    }

    /** The word for the feature of a size that follows from a part of a callout. */
    public static Optional<String> featureOf(CalloutPart part) {
        return CheckOfCallout.feature(part);
    }

    /** Those that can make the reading; all of them where nothing is known of it. */
    private static List<String> gauges(List<String> reading) {
        List<String> able = GaugeAbility.KNOWN.stream()
                .filter(ability -> ability.canMake(reading))
                .map(ability -> ability.kind().key())
                .toList();
        return able.isEmpty() ? GaugeKind.KNOWN.stream().map(GaugeKind::key).toList() : able;
    }

    private static <E> List<String> words(E[] choices, Function<E, String> word) {
        return Arrays.stream(choices).map(word).toList();
    }
}
