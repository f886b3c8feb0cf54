package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.AcceptedBefore;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** What changed since the last accepted record of the part number, and that it was not made for two years. */
public final class EarlierWords {

    private final Words words;

    public EarlierWords(Words words) {
        this.words = words;
    }

    /** A line each; none of a run that does not say what was known before it. */
    public List<String> lines(Sheet sheet) {
        return sheet.run()
                .begun()
                .earlier()
                .map(earlier -> lines(sheet, earlier))
                .orElse(List.of());
    }

    private List<String> lines(Sheet sheet, Earlier earlier) {
        List<String> lines = new ArrayList<>();
        lines.add(earlier.accepted().map(before -> since(sheet, before)).orElseGet(() -> words.say("since.none")));
        if (earlier.isLapsed(sheet.run().entries().get(0).at())) {
            lines.add(lapsed(earlier));
        }
        return lines;
    }

    /** That a first article is due; only of one that is lapsed. */
    public String lapsed(Earlier earlier) {
        return words.say(
                "since.lapsed", earlier.lastMade().orElseThrow().toLocalDate().toString());
    }

    private String since(Sheet sheet, AcceptedBefore before) {
        List<String> changed = changed(sheet, before);
        return changed.isEmpty()
                ? words.say("since.nothing", before.run())
                : words.say("since.changed", before.run(), words.list(changed));
    }

    private List<String> changed(Sheet sheet, AcceptedBefore before) {
        Event.Begun begun = sheet.run().begun();
        List<String> changed = new ArrayList<>();
        if (!before.planHash().equals(begun.plan().sha256())) {
            changed.add(words.say("since.plan", before.issue(), sheet.plan().issue()));
            if (!before.otherwise().isEmpty()) {
                changed.add(words.say("since.checks", before.otherwise()));
            }
        }
        if (!before.machine().equals(begun.machine())) {
            changed.add(words.say("since.machine", before.machine(), begun.machine()));
        }
        if (!before.lot().equals(begun.lot())) {
            changed.add(words.say("since.lot", before.lot(), begun.lot()));
        }
        List<String> other = otherGauges(sheet, before);
        if (!other.isEmpty()) {
            changed.add(words.say("since.gauges", other));
        }
        return changed;
    }

    /** Those of this run that were not in that one; what is not set yet is not known. */
    private static List<String> otherGauges(Sheet sheet, AcceptedBefore before) {
        TreeSet<String> other = new TreeSet<>();
        sheet.run().entries().stream()
                .flatMap(entry -> entry.event().as(StepEvent.GaugeSet.class).stream())
                .map(StepEvent.GaugeSet::setting)
                .map(Setting::gauge)
                .map(gauge -> gauge.id())
                .forEach(other::add);
        before.gauges().forEach(other::remove);
        return List.copyOf(other);
    }
}
