package org.tenthwise.app.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/** Draws digests of runs. Steps that did not change since the digest before are not drawn again. */
public final class RunDigests {

    private final Plans plans;

    public RunDigests(Plans plans) {
        this.plans = plans;
    }

    /**
     * @param entries all of one run, in order
     * @return absent where the first of them does not begin a run
     */
    public Optional<RunDigest> of(List<Entry> entries) {
        if (entries.isEmpty() || entries.get(0).event().as(Event.Begun.class).isEmpty()) {
            return Optional.empty();
        }
        Run run = new Run(entries);
        return Optional.of(drawn(run, () -> sheet(run), Optional.empty()));
    }

    /** The digest of the same run with more entries behind the last. */
    public RunDigest after(RunDigest before, List<Entry> added) {
        Run run = before.of();
        for (Entry entry : added) {
            run = run.with(entry);
        }
        Run grown = run;
        return drawn(
                grown,
                () -> before.sheet().map(sheet -> with(sheet, added)).or(() -> sheet(grown)),
                Optional.of(before));
    }

    private Optional<Sheet> sheet(Run run) {
        return plans.of(run.begun().plan()).map(plan -> Sheet.of(plan, run));
    }

    private static Sheet with(Sheet sheet, List<Entry> added) {
        Sheet next = sheet;
        for (Entry entry : added) {
            next = next.with(entry);
        }
        return next;
    }

    /**
     * No list fails and no entry is refused for a run that cannot be judged, whatever is the matter with its entries.
     */
    private static RunDigest drawn(Run run, Supplier<Optional<Sheet>> judging, Optional<RunDigest> before) {
        try {
            return drawn(run, judging.get(), before);
        } catch (RuntimeException e) {
            return drawn(run, Optional.<Sheet>empty(), before);
        }
    }

    private static RunDigest drawn(Run run, Optional<Sheet> sheet, Optional<RunDigest> before) {
        Set<String> people = people(run.entries());
        return new RunDigest(
                run,
                sheet,
                facts(run, sheet, people),
                steps(sheet, before),
                gauges(run),
                names(run, List.copyOf(people)));
    }

    private static RunFacts facts(Run run, Optional<Sheet> sheet, Set<String> people) {
        Event.Begun begun = run.begun();
        PartId part = begun.part();
        Entry first = run.entries().get(0);
        return new RunFacts(
                first.seq(),
                run.id(),
                part.number(),
                part.revision(),
                begun.serial(),
                begun.lot(),
                begun.machine(),
                begun.plan().sha256(),
                first.at(),
                run.by(),
                List.copyOf(people),
                run.last().seq(),
                run.last().at(),
                sheet.map(RunDigests::stand),
                run.closed().map(closed -> new RunFacts.Closing(closed.signedBy(), closed.meaning())));
    }

    private static RunFacts.Stand stand(Sheet sheet) {
        return new RunFacts.Stand(
                sheet.plan().issue(),
                Progress.whereItStopped(sheet).number(),
                sheet.outcome(),
                sheet.concessions(),
                !sheet.against().isEmpty());
    }

    private static List<RunDigest.OfStep> steps(Optional<Sheet> sheet, Optional<RunDigest> before) {
        List<RunDigest.OfStep> steps = new ArrayList<>();
        sheet.ifPresent(drawn -> {
            for (int i = 0; i < drawn.lines().size(); i++) {
                int at = i;
                steps.add(before.filter(earlier -> at < earlier.steps().size())
                        .map(earlier -> earlier.steps().get(at))
                        .filter(earlier -> earlier.line() == drawn.lines().get(at))
                        .orElseGet(
                                () -> StepDigest.of(drawn.run(), drawn.lines().get(at))));
            }
        });
        return steps;
    }

    private static List<GaugeUse> gauges(Run run) {
        return run.entries().stream()
                .flatMap(entry -> entry.event().as(StepEvent.GaugeSet.class).stream()
                        .map(set -> new GaugeUse(
                                entry.seq(),
                                set.step(),
                                set.setting().gauge().kind(),
                                set.setting().gauge().id(),
                                set.setting().reference())))
                .toList();
    }

    private static Set<String> people(List<Entry> entries) {
        Set<String> people = new LinkedHashSet<>();
        for (Entry entry : entries) {
            people.add(entry.by());
            entry.event().names().ifPresent(people::add);
        }
        people.removeIf(String::isBlank);
        return people;
    }

    private static List<NameUse> names(Run run, List<String> people) {
        List<NameUse> names = new ArrayList<>();
        for (int i = 0; i < people.size(); i++) {
            names.add(new NameUse(NameUse.Kind.PERSON, "", people.get(i), i));
        }
        Event.Begun begun = run.begun();
        if (!begun.machine().isBlank()) {
            names.add(new NameUse(NameUse.Kind.MACHINE, "", begun.machine(), 0));
        }
        if (!begun.lot().isBlank()) {
            names.add(new NameUse(NameUse.Kind.LOT, begun.part().number(), begun.lot(), 0));
        }
        Map<ReadingSummary.GaugeMark, Integer> gauges = new LinkedHashMap<>();
        for (Entry entry : run.entries()) {
            entry.event().as(StepEvent.GaugeSet.class).ifPresent(set -> {
                Gauge gauge = set.setting().gauge();
                gauges.putIfAbsent(new ReadingSummary.GaugeMark(gauge.kind(), gauge.id()), gauges.size());
            });
        }
        gauges.forEach((gauge, place) ->
                names.add(new NameUse(NameUse.Kind.GAUGE, gauge.kind().key(), gauge.mark(), place)));
        return names;
    }
}
