package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/**
 * A gauge that a reading was made with, or what that gauge was set on, under the certificate it had then.
 *
 * @param at the reading for a gauge; for what it was set on, the setting
 */
record MadeWith(GaugeOrMaster what, Calibration calibration, Entry at) {

    /** Of a reading or an answer: the gauge, then what it was set on, where it was; empty where nothing was set. */
    static List<MadeWith> of(Run run, Step step, Entry read) {
        List<MadeWith> with = new ArrayList<>();
        run.gauges().setBefore(read, step).ifPresent(set -> {
            Setting setting = StepEvent.GaugeSet.in(set).setting();
            with.add(under(run, GaugeOrMaster.of(setting.gauge()), read));
            GaugeOrMaster.under(setting).ifPresent(master -> with.add(under(run, master, set)));
        });
        return with;
    }

    private static MadeWith under(Run run, GaugeOrMaster what, Entry at) {
        return new MadeWith(what, run.calibrations().of(what, at.seq()), at);
    }

    /** Whether it was past its due day, by the day of the place where it happened. */
    boolean isPast() {
        return calibration.isPastOn(at.at().toLocalDate());
    }
}
