package org.tenthwise.app.matters;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.session.GaugeRack;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.RunGauges;
import org.tenthwise.model.run.StepEvent;

/**
 * A gauge in doubt is a matter of the shop until it is told how it counts, and one of every run of this store, closed
 * or open, in which a check was read with it and was not found out otherwise since. A run that was put away is not
 * named, nor one that came in: a gauge elsewhere may have the same mark.
 */
final class GaugesInDoubt {

    private final KeptEntries kept;

    GaugesInDoubt(KeptEntries kept) {
        this.kept = kept;
    }

    /** Those of the runs, for one gauge. */
    Stream<OpenMatter> of(GaugeRack.InDoubt doubt) {
        Gauge gauge = doubt.gauge();
        return kept.history().runsWith(gauge.kind(), gauge.id()).stream().flatMap(run -> of(doubt, run).stream());
    }

    /** None of a run that this release cannot judge: {@code History.unjudged()} names it. */
    private List<OpenMatter> of(GaugeRack.InDoubt doubt, String id) {
        try {
            Sheet sheet = Runs.sheet(kept, id);
            Event.Begun begun = sheet.run().begun();
            return sheet.outcome() == Outcome.PUT_AWAY
                    ? List.of()
                    : kept.history().runsOf(begun.part(), begun.serial()).stream()
                            .filter(run -> run.id().equals(id))
                            .flatMap(run -> steps(doubt.gauge(), sheet).map(step -> matter(doubt, run, step)))
                            .toList();
        } catch (CouldNotRead e) {
            return List.of();
        }
    }

    private static OpenMatter matter(GaugeRack.InDoubt doubt, RunFacts run, int step) {
        return new OpenMatter(
                Optional.of(run),
                new Matter(
                        MatterKind.GAUGE_IN_DOUBT,
                        step,
                        doubt.gauge().id(),
                        "",
                        doubt.found().by(),
                        doubt.found().at()),
                Optional.empty());
    }

    private static Stream<Integer> steps(Gauge gauge, Sheet sheet) {
        RunGauges gauges = sheet.run().gauges();
        return Stream.concat(
                        gauges.settings().stream().filter(setting -> !gauges.countingUnder(setting)
                                .isEmpty()),
                        gauges.settingsStruck().keySet().stream()
                                .filter(setting -> !gauges.under(setting).isEmpty())
                                .filter(setting -> sheet.line(step(setting)).open()))
                .filter(setting -> isOf(gauge, setting))
                .map(GaugesInDoubt::step)
                .distinct()
                .sorted();
    }

    private static int step(Entry setting) {
        return StepEvent.GaugeSet.in(setting).step();
    }

    private static boolean isOf(Gauge doubted, Entry setting) {
        Gauge gauge = StepEvent.GaugeSet.in(setting).setting().gauge();
        return gauge.id().equals(doubted.id()) && gauge.kind().equals(doubted.kind());
    }
}
