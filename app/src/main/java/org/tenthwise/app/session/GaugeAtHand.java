package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/**
 * The gauge of the step in hand while it is being set: which one, its sense, its master or wires, its zero. What is
 * chosen here is kept in the ledger with the first reading or the zero, whichever comes first.
 */
final class GaugeAtHand {

    private final GaugeRack rack;
    private final Unit unit;
    private Optional<String> chosen = Optional.empty();
    private Optional<String> reference = Optional.empty();
    private Optional<Written> certified = Optional.empty();

    GaugeAtHand(GaugeRack rack, Unit unit) {
        this.rack = rack;
        this.unit = unit;
    }

    void putDown() {
        chosen = Optional.empty();
        reference = Optional.empty();
        certified = Optional.empty();
    }

    /** @param markOfReference mark of its master or wires; absent where they go by their nominal size */
    void choose(String mark, Optional<String> markOfReference) {
        chosen = Optional.of(mark);
        reference = markOfReference;
        certified = Optional.empty();
    }

    void certify(Written size) {
        certified = Optional.of(size);
    }

    /** What must be known of the gauge before it can be read; absent once it is set or needs no setting. */
    Optional<Asked> asked(Step step, Run run) {
        if (step.check().means().isEmpty() || isSet(step, run)) {
            return Optional.empty();
        }
        Check.Means means = step.check().means().get();
        Optional<String> mark = mark(means, run);
        if (mark.isEmpty()) {
            return Optional.of(new Asked.WhichGauge(means.kind(), rack.ofKind(means.kind())));
        }
        if (means.kind().reference() == GaugeKind.Reference.NONE) {
            return Optional.empty();
        }
        boolean compares = means.kind().reference() == GaugeKind.Reference.MASTER;
        if (compares && rack.find(mark.get(), means.kind()).isEmpty()) {
            return Optional.of(new Asked.WhichSense(mark.get(), means.kind()));
        }
        if (certified.isEmpty()) {
            return Optional.of(new Asked.Certified(means.kind().reference(), suggested(mark.get(), means, run)));
        }
        return compares ? Optional.of(new Asked.Zero(certified.get(), new Written("0", unit))) : Optional.empty();
    }

    /** The setting that the next reading or answer brings with it: a gauge that needs no master, or wires just typed. */
    Optional<Setting> settingToMake(Step step, Run run) {
        if (step.check().means().isEmpty() || isSet(step, run)) {
            return Optional.empty();
        }
        Check.Means means = step.check().means().get();
        Gauge gauge = new Gauge(mark(means, run).orElseThrow(), means.kind(), Optional.empty());
        return Optional.of(means.kind().reference() == GaugeKind.Reference.WIRES
                ? Setting.overWires(gauge, reference(means), certified.orElseThrow())
                : Setting.direct(gauge));
    }

    Setting onMaster(Step step, Run run, Written zero) {
        Check.Means means = step.check().means().orElseThrow();
        Gauge gauge = mark(means, run).flatMap(mark -> rack.find(mark, means.kind())).orElseThrow();
        return Setting.onMaster(gauge, reference(means), certified.orElseThrow(), zero);
    }

    private String reference(Check.Means means) {
        return reference.orElseGet(() -> means.reference().orElseThrow().text());
    }

    private boolean isSet(Step step, Run run) {
        return chosen.isEmpty() && run.setting(step.number()).isPresent();
    }

    /** The gauge chosen here, the one the plan names, or the last of its kind used in this run. */
    private Optional<String> mark(Check.Means means, Run run) {
        return chosen.or(means::gauge).or(() -> settings(run).filter(setting -> setting.gauge().kind() == means.kind())
                .reduce((earlier, later) -> later).map(setting -> setting.gauge().id()));
    }

    /** The certified size the same gauge was set on in this run for the same nominal, otherwise the nominal. */
    private Written suggested(String mark, Check.Means means, Run run) {
        Written nominal = means.reference().orElseThrow();
        return settings(run).filter(setting -> setting.gauge().id().equals(mark)
                        && setting.reference().equals(Optional.of(nominal.text())))
                .reduce((earlier, later) -> later).flatMap(Setting::certified).orElse(nominal);
    }

    private static Stream<Setting> settings(Run run) {
        List<Entry> entries = run.entries();
        return entries.stream().map(Entry::event)
                .flatMap(event -> event instanceof Event.GaugeSet set ? Stream.of(set.setting()) : Stream.empty());
    }
}
