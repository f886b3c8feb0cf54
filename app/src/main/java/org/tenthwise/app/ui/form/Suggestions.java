package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.NameUse;
import org.tenthwise.app.session.Runs;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Words;

/**
 * Ready answers for a form: what was written in the runs so far, that of the latest run first, and what the bundle has
 * ready.
 *
 * @param gauges marks of the gauges of the kind of the step in hand, those the plan names first; empty where it has
 *     none
 */
public record Suggestions(List<String> people, List<String> gauges) {

    /** Called on the thread of the ledger. */
    static Suggestions at(Step step, Plan plan, Runs shop) {
        return new Suggestions(
                shop.names().people(),
                step.check()
                        .means()
                        .map(Check.Means::kind)
                        .map(kind -> gauges(kind, plan, shop.history()))
                        .orElse(List.of()));
    }

    /** Lots of earlier runs on the same part number. */
    public static List<String> lots(PartId part, History history) {
        return history.names(NameUse.Kind.LOT, part.number());
    }

    private static List<String> gauges(GaugeKind kind, Plan plan, History history) {
        Stream<String> named = plan.steps().stream()
                .flatMap(step -> step.check().means().stream())
                .filter(means -> means.kind() == kind)
                .map(Check.Means::gauge)
                .flatMap(Optional::stream);
        return Stream.concat(named, history.names(NameUse.Kind.GAUGE, kind.key()).stream())
                .distinct()
                .toList();
    }

    /** Ready answers of the bundle, which stand in one text with upright strokes between. */
    public static List<String> ready(Words words, String key) {
        return List.of(words.say(key).split("\\s*\\|\\s*"));
    }
}
