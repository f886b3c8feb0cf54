package org.tenthwise.app.history;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.record.Line;
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
        return Optional.of(drawn(run, () -> sheet(run), Optional.empty(), entries));
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
                Optional.of(before),
                added);
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
    private static RunDigest drawn(
            Run run, Supplier<Optional<Sheet>> judging, Optional<RunDigest> before, List<Entry> added) {
        try {
            return drawn(run, judging.get(), before, added);
        } catch (RuntimeException e) {
            return drawn(run, Optional.<Sheet>empty(), before, added);
        }
    }

    /** @param added behind the entries of {@code before} */
    private static RunDigest drawn(Run run, Optional<Sheet> sheet, Optional<RunDigest> before, List<Entry> added) {
        List<String> people = people(before, added);
        List<GaugeUse> gauges = gauges(before, added);
        return new RunDigest(
                run,
                sheet,
                facts(run, sheet, people),
                steps(sheet, before),
                gauges,
                sheet.map(drawn -> tools(drawn, before, added)).orElse(List.of()),
                sheet.map(MattersOfRun::of).orElse(List.of()),
                names(run.begun(), people, gauges));
    }

    private static RunFacts facts(Run run, Optional<Sheet> sheet, List<String> people) {
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
                people,
                run.last().seq(),
                run.last().at(),
                sheet.map(RunDigests::stand),
                run.closed().map(closed -> new RunFacts.Closing(closed.signedBy(), closed.meaning())),
                new RunFacts.Kind(begun.occasion().purpose(), begun.occasion().piece()));
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
                Line line = drawn.lines().get(at);
                steps.add(before.filter(earlier -> at < earlier.steps().size())
                        .map(earlier -> earlier.steps().get(at))
                        .filter(earlier -> earlier.line() == line && !StepDigest.isWorkedOutOfOthers(line.finding()))
                        .orElseGet(() -> StepDigest.of(drawn, line, steps)));
            }
        });
        return steps;
    }

    private static List<GaugeUse> gauges(Optional<RunDigest> before, List<Entry> added) {
        List<GaugeUse> gauges = new ArrayList<>(before.map(RunDigest::gauges).orElse(List.of()));
        for (Entry entry : added) {
            entry.event()
                    .as(StepEvent.GaugeSet.class)
                    .ifPresent(set -> gauges.add(new GaugeUse(
                            entry.seq(),
                            set.step(),
                            set.setting().gauge().kind(),
                            set.setting().gauge().id(),
                            set.setting().reference())));
        }
        return gauges;
    }

    private static List<ToolChange> tools(Sheet sheet, Optional<RunDigest> before, List<Entry> added) {
        Optional<RunDigest> earlier = before.filter(digest -> digest.sheet().isPresent());
        List<ToolChange> tools = new ArrayList<>(earlier.map(RunDigest::tools).orElse(List.of()));
        for (Entry entry : earlier.isPresent() ? added : sheet.run().entries()) {
            ToolChange.in(entry, sheet.plan()).ifPresent(tools::add);
        }
        return tools;
    }

    private static List<String> people(Optional<RunDigest> before, List<Entry> added) {
        Set<String> people =
                new LinkedHashSet<>(before.map(digest -> digest.run().people()).orElse(List.of()));
        for (Entry entry : added) {
            people.add(entry.by());
            entry.event().names().ifPresent(people::add);
        }
        people.removeIf(String::isBlank);
        return List.copyOf(people);
    }

    private static List<NameUse> names(Event.Begun begun, List<String> people, List<GaugeUse> used) {
        List<NameUse> names = new ArrayList<>();
        for (int i = 0; i < people.size(); i++) {
            names.add(new NameUse(NameUse.Kind.PERSON, "", people.get(i), i));
        }
        if (!begun.machine().isBlank()) {
            names.add(new NameUse(NameUse.Kind.MACHINE, "", begun.machine(), 0));
        }
        if (!begun.lot().isBlank()) {
            names.add(new NameUse(NameUse.Kind.LOT, begun.part().number(), begun.lot(), 0));
        }
        List<ReadingSummary.GaugeMark> gauges = used.stream()
                .map(use -> new ReadingSummary.GaugeMark(use.kind().key(), use.mark()))
                .distinct()
                .toList();
        for (int i = 0; i < gauges.size(); i++) {
            names.add(new NameUse(
                    NameUse.Kind.GAUGE, gauges.get(i).kind(), gauges.get(i).mark(), i));
        }
        return names;
    }
}
