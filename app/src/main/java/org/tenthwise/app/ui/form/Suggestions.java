package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.session.RunSummary;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/**
 * Ready answers for a form: what was written in the runs so far, the latest run first, and what the bundle has ready.
 */
public final class Suggestions {

    private final List<RunSummary> runs;

    /** @param runs the one last worked on first */
    public Suggestions(List<RunSummary> runs) {
        this.runs = List.copyOf(runs);
    }

    public List<String> people() {
        return listed(run -> run.sheet().run().entries().stream().flatMap(Suggestions::people));
    }

    public List<String> machines() {
        return listed(run -> Stream.of(run.sheet().run().begun().machine()));
    }

    /** Lots of earlier runs on the same part number. */
    public List<String> lots(PartId part) {
        return listed(run -> Stream.of(run.sheet().run().begun())
                .filter(begun -> begun.part().number().equals(part.number()))
                .map(Event.Begun::lot));
    }

    /** Marks of the gauges of a kind, those {@code plan} names first. */
    public List<String> gauges(GaugeKind kind, Plan plan) {
        Stream<String> named = plan.steps().stream()
                .flatMap(step -> step.check().means().stream())
                .filter(means -> means.kind() == kind)
                .map(Check.Means::gauge)
                .flatMap(Optional::stream);
        Stream<String> used = runs.stream()
                .flatMap(run -> run.sheet().run().entries().stream())
                .map(Entry::event)
                .flatMap(event -> event instanceof Event.GaugeSet set
                                && set.setting().gauge().kind() == kind
                        ? Stream.of(set.setting().gauge().id())
                        : Stream.empty());
        return Stream.concat(named, used).distinct().toList();
    }

    /** Ready answers of the bundle, which stand in one text with upright strokes between. */
    public static List<String> ready(Words words, String key) {
        return List.of(words.say(key).split("\\s*\\|\\s*"));
    }

    private List<String> listed(Function<RunSummary, Stream<String>> pick) {
        return runs.stream()
                .flatMap(pick)
                .filter(text -> !text.isBlank())
                .distinct()
                .toList();
    }

    private static Stream<String> people(Entry entry) {
        if (entry.event() instanceof Event.HandedOver over) {
            return Stream.of(entry.by(), over.to());
        }
        if (entry.event() instanceof Event.DispositionSigned disposed) {
            return Stream.of(entry.by(), disposed.signedBy());
        }
        if (entry.event() instanceof Event.Signed signed) {
            return Stream.of(entry.by(), signed.signedBy());
        }
        return entry.event() instanceof Event.Closed closed
                ? Stream.of(entry.by(), closed.signedBy())
                : Stream.of(entry.by());
    }
}
