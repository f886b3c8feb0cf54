package org.tenthwise.model.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Step;

/** The gauges of a run, as its entries tell it: what lies ready for each step, what it is set on, what was read so. */
public final class RunGauges {

    private final Run run;

    RunGauges(Run run) {
        this.run = run;
    }

    /** What the gauge of a step is set with now; nothing once another gauge was taken or the setting was struck out. */
    public Optional<Setting> setting(int step) {
        return lastGauge(step)
                .filter(entry -> run.struck(entry.seq()).isEmpty())
                .flatMap(entry -> entry.event() instanceof StepEvent.GaugeSet set
                        ? Optional.of(set.setting())
                        : Optional.empty());
    }

    /** What the gauge of a step was last set with before an entry, struck out since or not. */
    public Optional<Setting> settingBefore(Entry entry, Step step) {
        return setBefore(entry, step)
                .flatMap(set -> set.event().as(StepEvent.GaugeSet.class))
                .map(StepEvent.GaugeSet::setting);
    }

    /** The entry that holds it: of one gauge that is set twice, what was read before and after stands apart. */
    public Optional<Entry> setBefore(Entry entry, Step step) {
        return run.at(step.number()).stream()
                .filter(earlier -> earlier.seq() < entry.seq())
                .filter(earlier -> earlier.event() instanceof StepEvent.GaugeSet)
                .reduce((earlier, later) -> later);
    }

    /** Whether what was read with an entry is read with the gauge of its step as it is set now, and not set anew. */
    public boolean isAsItIsSet(Entry reading, Step step) {
        return setting(step.number()).isPresent() && setBefore(reading, step).equals(lastGauge(step.number()));
    }

    /** The gauge that lies ready for a step and is not set: it was taken, or its setting was struck out. */
    public Optional<StepEvent.GaugeChosen> chosen(int step) {
        return setting(step).isPresent()
                ? Optional.empty()
                : lastGauge(step)
                        .map(Entry::event)
                        .map(event -> event instanceof StepEvent.GaugeSet set
                                ? new StepEvent.GaugeChosen(
                                        step, set.setting().gauge().id(), Optional.empty())
                                : (StepEvent.GaugeChosen) event);
    }

    /**
     * Mark of the gauge under which the next reading of a step is kept: the one set or taken for it, the one the plan
     * names, or the last of its kind used in this run; absent where none of these is known.
     */
    public Optional<String> mark(Step step) {
        return setting(step.number())
                .map(setting -> setting.gauge().id())
                .or(() -> chosen(step.number()).map(StepEvent.GaugeChosen::mark))
                .or(() -> step.check().means().flatMap(means -> means.gauge().or(() -> lastOf(means.kind()))));
    }

    private Optional<String> lastOf(GaugeKind kind) {
        return settings().stream()
                .map(entry -> StepEvent.GaugeSet.in(entry).setting().gauge())
                .filter(gauge -> gauge.kind().equals(kind))
                .reduce((earlier, later) -> later)
                .map(Gauge::id);
    }

    private Optional<Entry> lastGauge(int step) {
        return run.at(step).stream().filter(entry -> ofGauge(entry, step)).reduce((earlier, later) -> later);
    }

    private static boolean ofGauge(Entry entry, int step) {
        return entry.event() instanceof StepEvent.GaugeSet set && set.step() == step
                || entry.event() instanceof StepEvent.GaugeChosen chosen && chosen.step() == step;
    }

    /** What was read under a setting, and what a limit gauge said, struck out or not. */
    public List<Entry> under(Entry setting) {
        int step = StepEvent.GaugeSet.in(setting).step();
        return run.at(step).stream()
                .filter(entry -> entry.seq() > setting.seq())
                .takeWhile(entry -> !ofGauge(entry, step))
                .filter(entry -> entry.event() instanceof StepEvent.ReadingTaken taken && taken.step() == step
                        || entry.event() instanceof StepEvent.Answered answered
                                && answered.step() == step
                                && answered.question().byLimitGauge())
                .toList();
    }

    /** The same without what was struck out for itself. */
    public List<Entry> countingUnder(Entry setting) {
        return under(setting).stream()
                .filter(entry -> run.struck(entry.seq()).isEmpty())
                .toList();
    }

    /** The settings that were struck out, each with why and by whom, in the order they were made. */
    public Map<Entry, Pass.Struck> settingsStruck() {
        Map<Entry, Pass.Struck> gone = new LinkedHashMap<>();
        run.entries().stream()
                .filter(entry -> entry.event() instanceof StepEvent.GaugeSet
                        && run.struck(entry.seq()).isPresent())
                .forEach(entry -> gone.put(entry, run.struck(entry.seq()).orElseThrow()));
        return gone;
    }

    /** The settings of gauges that count, in the order they were made, each in the entry that holds it. */
    public List<Entry> settings() {
        return run.entries().stream()
                .filter(entry -> entry.event() instanceof StepEvent.GaugeSet
                        && run.struck(entry.seq()).isEmpty())
                .toList();
    }
}
