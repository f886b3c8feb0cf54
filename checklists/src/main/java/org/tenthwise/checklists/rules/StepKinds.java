package org.tenthwise.checklists.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Feature;

/** The kinds of step there are, by the word a plan calls them. Which gauge can make which reading stands here. */
final class StepKinds {

    static final String BORE = "bore";
    static final String DIAMETER = "diameter";
    static final String RUN_OUT = "run-out";

    private final Map<String, StepKind> kinds = new LinkedHashMap<>();

    StepKinds() {
        kinds.put("confirm", new AskingKind(Check.Confirm::new));
        kinds.put("look", new AskingKind(Check.Look::new));
        kinds.put(RUN_OUT, new RunOutKind());
        kinds.put(
                BORE,
                new SizeKind(
                        Feature.BORE, List.of(GaugeKind.BORE_GAUGE, GaugeKind.INSIDE_MICROMETER, GaugeKind.CALIPER)));
        kinds.put(
                "width",
                new SizeKind(
                        Feature.WIDTH,
                        List.of(GaugeKind.INSIDE_MICROMETER, GaugeKind.GAUGE_BLOCKS, GaugeKind.CALIPER)));
        kinds.put(DIAMETER, new SizeKind(Feature.DIAMETER, List.of(GaugeKind.MICROMETER, GaugeKind.CALIPER)));
        kinds.put(
                "depth",
                new SizeKind(
                        Feature.DEPTH, List.of(GaugeKind.DEPTH_GAUGE, GaugeKind.DEPTH_MICROMETER, GaugeKind.CALIPER)));
        kinds.put("plug-fit", new PlugFitKind());
        kinds.put("thread-over-wires", new OverWiresKind());
        kinds.put("go-not-go", new GoNotGoKind());
    }

    List<String> names() {
        return List.copyOf(kinds.keySet());
    }

    Optional<StepKind> named(String name) {
        return Optional.ofNullable(kinds.get(name));
    }
}
