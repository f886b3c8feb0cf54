package org.tenthwise.checklists.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.WorkedCheck;

/** The kinds of step there are, by the word a plan calls them. */
final class StepKinds {

    static final String BORE = Feature.BORE.key();
    static final String DIAMETER = Feature.DIAMETER.key();
    static final String RUN_OUT = RunOutCheck.KEY;

    private final Map<String, StepKind> kinds = new LinkedHashMap<>();

    StepKinds() {
        kinds.put(AskedCheck.Confirm.KEY, new AskedKind(AskedCheck.Confirm::new));
        kinds.put(AskedCheck.VisualCheck.KEY, new AskedKind(AskedCheck.VisualCheck::new));
        kinds.put(RUN_OUT, new RunOutKind());
        Feature.PLAIN.forEach(feature -> kinds.put(feature.key(), SizeKind.of(feature)));
        kinds.put(SizeCheck.KEY, SizeKind.ofAny());
        kinds.put(IndicatedCheck.KEY, new IndicatedKind());
        kinds.put(AngleCheck.KEY, new AngleKind());
        kinds.put(ScaleCheck.KEY, new ScaleKind());
        kinds.put(PositionCheck.KEY, new PositionKind());
        kinds.put(WorkedCheck.KEY, new WorkedKind());
        kinds.put(PlugFitCheck.KEY, new PlugFitKind());
        kinds.put(CalculatedCheck.KEY, new CalculatedKind());
        kinds.put(OverWiresCheck.KEY, new OverWiresKind());
        kinds.put(AskedCheck.GoNotGo.KEY, new GoNotGoKind());
        kinds.put(DocumentCheck.KEY, new DocumentKind());
    }

    List<String> names() {
        return List.copyOf(kinds.keySet());
    }

    Optional<StepKind> named(String name) {
        return Optional.ofNullable(kinds.get(name));
    }
}
