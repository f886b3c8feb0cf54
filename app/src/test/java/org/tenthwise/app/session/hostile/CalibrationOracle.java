package org.tenthwise.app.session.hostile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/**
 * What was read past a due day, from the entries of a run alone.
 *
 * <p>The rules, in words. What is said of a gauge, or of what gauges are set on, holds from then on until something
 * else is said of it. What puts right stands in the place of what was said last before it, as if that had never been
 * said; where nothing was said before, it holds from the beginning. A reading is past the due day of its gauge when the
 * day of the reading is a later one by what holds at the reading; it is past that of what the gauge was set on when the
 * day of the setting is, by what holds at the setting.
 */
final class CalibrationOracle {

    /** Something said, and from where on it holds. */
    private record Said(long from, Calibration calibration) {}

    private final List<Entry> entries;

    CalibrationOracle(List<Entry> entries) {
        this.entries = entries;
    }

    /** Marks of what was past its day at what counts now of a step, rising; a master has a {@code @} before it. */
    TreeSet<String> pastAt(Facts step) {
        TreeSet<String> past = new TreeSet<>();
        Counting counting = new Counting(entries);
        for (Entry read : entries) {
            if (!counting.isCounted(step, read)) {
                continue;
            }
            Entry set = lastSet(step, read).orElseThrow();
            StepEvent.GaugeSet gauge = (StepEvent.GaugeSet) set.event();
            String mark = gauge.setting().gauge().id();
            if (isPast(GaugeOrMaster.gauge(mark, gauge.setting().gauge().kind()), read)) {
                past.add(mark);
            }
            gauge.setting()
                    .reference()
                    .filter(master -> isPast(GaugeOrMaster.master(master), set))
                    .ifPresent(master -> past.add("@" + master));
        }
        return past;
    }

    private Optional<Entry> lastSet(Facts step, Entry read) {
        return entries.stream()
                .filter(entry -> entry.seq() < read.seq())
                .filter(entry -> entry.event() instanceof StepEvent.GaugeSet set && set.step() == step.number())
                .reduce((earlier, later) -> later);
    }

    private boolean isPast(GaugeOrMaster what, Entry at) {
        List<Said> said = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.event() instanceof ShopEvent.CalibrationKnown known
                    && known.what().equals(what)) {
                long from = entry.seq();
                if (known.putsRight()) {
                    from = said.isEmpty() ? 0 : said.remove(said.size() - 1).from();
                }
                said.add(new Said(from, known.calibration()));
            }
        }
        LocalDate day = at.at().toLocalDate();
        Optional<LocalDate> due = Optional.empty();
        for (Said one : said) {
            due = one.from() <= at.seq() ? one.calibration().due() : due;
        }
        return due.filter(last -> last.compareTo(day) < 0).isPresent();
    }
}
