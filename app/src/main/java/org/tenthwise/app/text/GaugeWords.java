package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * The gauge of a step in one line: which one it is, which way its number goes, what it was set on and what it read
 * there.
 */
public final class GaugeWords {

    private final Words words;

    public GaugeWords(Words words) {
        this.words = words;
    }

    /** A kind of gauge as people call it; a shop's own by the name it has there. */
    public static String kind(Words words, GaugeKind kind) {
        return kind.isKnown() ? words.say("gauge-kind." + kind.key()) : kind.key();
    }

    /** The same by its key. */
    public String kindOf(String key) {
        return GaugeKind.ofKey(key).map(kind -> kind(words, kind)).orElse(key);
    }

    /** Of a step as it stands; empty for one without a gauge. */
    public String line(Run run, Step step) {
        Optional<Check.Means> means = step.check().means();
        if (means.isEmpty()) {
            return "";
        }
        return run.gauges()
                .setting(step.number())
                .map(this::line)
                .orElseGet(() -> notSet(means.get().kind(), run.gauges().mark(step)));
    }

    public String line(Setting setting) {
        String mark = setting.gauge().id();
        List<String> parts = new ArrayList<>();
        if (setting.certified().isEmpty()) {
            return words.say(
                    "gauge-line.direct", mark, kind(words, setting.gauge().kind()));
        }
        parts.add(mark);
        setting.gauge()
                .sense()
                .ifPresent(sense -> parts.add(words.say(
                        setting.gauge().kind().isToldByItsPlunger() ? "gauge-line.sense" : "record.sense", sense)));
        parts.add(words.say(setOn(setting), reference(setting)));
        setting.zero().ifPresent(zero -> parts.add(words.say("gauge-line.zero", Figures.written(zero))));
        return String.join(words.say("gauge-line.between"), parts);
    }

    /** A bore gauge is set on a ring. */
    private String setOn(Setting setting) {
        GaugeKind kind = setting.gauge().kind();
        return kind.reference() == GaugeKind.Reference.MASTER && !kind.equals(GaugeKind.BORE_GAUGE)
                ? "gauge-line.set-on-a-master"
                : words.key("gauge-line.set-on", kind.reference());
    }

    /**
     * The same in parts, those first that matter most where there is no room for all: which gauge, what it is set on
     * and read there, which way its number goes.
     */
    public List<String> brief(Run run, Step step) {
        Optional<Check.Means> means = step.check().means();
        if (means.isEmpty()) {
            return List.of();
        }
        return run.gauges()
                .setting(step.number())
                .filter(setting -> setting.certified().isPresent())
                .map(this::brief)
                .orElseGet(() -> List.of(line(run, step)));
    }

    private List<String> brief(Setting setting) {
        List<String> parts = new ArrayList<>(List.of(setting.gauge().id()));
        String on = words.say(words.key("gauge-line.on", setting.gauge().kind().reference()), reference(setting));
        parts.add(setting.zero()
                .map(zero -> words.say("gauge-line.at-zero", on, Figures.written(zero)))
                .orElse(on));
        setting.gauge().sense().ifPresent(sense -> parts.add(words.say("gauge-line.goes", sense)));
        return parts;
    }

    /** What stands between two parts. */
    public String between() {
        return words.say("gauge-line.between");
    }

    /** The certified size, and the mark where the master or the wires have one that is not their size. */
    public String reference(Setting setting) {
        String size = Figures.written(setting.certified().orElseThrow());
        return setting.reference()
                .filter(mark -> !Written.isPlainDecimal(mark))
                .map(mark -> words.say("gauge-line.marked", size, mark))
                .orElse(size);
    }

    /**
     * What does not count any more at a step because its gauge was set wrongly, a sentence for each setting; of all
     * steps for 0.
     */
    public List<String> withdrawn(Run run, int step) {
        List<String> said = new ArrayList<>();
        run.gauges().settingsStruck().forEach((entry, why) -> {
            int at = StepEvent.GaugeSet.in(entry).step();
            int readings = run.gauges().countingUnder(entry).size();
            if (readings > 0 && (step == 0 || step == at)) {
                said.add(words.say("gauge-line.withdrawn", readings, at, why.reason()));
            }
        });
        return said;
    }

    /** The same where nothing was done in the run since; absent otherwise. */
    public Optional<String> withdrawnLast(Run run) {
        Entry last = run.entries().get(run.entries().size() - 1);
        boolean since = run.gauges().settingsStruck().values().stream()
                .noneMatch(why -> why.entry().equals(last));
        List<String> said = since ? List.of() : withdrawn(run, 0);
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
    }

    private String notSet(GaugeKind kind, Optional<String> mark) {
        String gauge = mark.map(known -> words.say("gauge-line.direct", known, kind(words, kind)))
                .orElseGet(() -> words.say("gauge-line.any", kind(words, kind)));
        return kind.reference() == GaugeKind.Reference.NONE
                ? gauge
                : gauge + words.say("gauge-line.between") + words.say("gauge-line.not-set");
    }
}
