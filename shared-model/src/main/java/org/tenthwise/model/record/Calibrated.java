package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/**
 * By what certificates the gauge of a reading and what it was set on were calibrated, as the run says it.
 *
 * @param gauge where the reading was made
 * @param master where the gauge was set; not stated for one that reads the size itself
 * @param gaugePast whether the reading was made past the due day of the gauge
 * @param masterPast whether the gauge was set past that of its master
 */
public record Calibrated(Calibration gauge, Calibration master, boolean gaugePast, boolean masterPast) {

    /** Of a reading or an answer; absent where nothing was set. */
    static Optional<Calibrated> of(Run run, Step step, Entry read) {
        return run.gauges().setBefore(read, step).map(set -> {
            Setting setting = StepEvent.GaugeSet.in(set).setting();
            Calibration gauge = run.calibrations().of(GaugeOrMaster.of(setting.gauge()), read.seq());
            Calibration master = GaugeOrMaster.under(setting)
                    .map(on -> run.calibrations().of(on, set.seq()))
                    .orElse(Calibration.NOT_STATED);
            return new Calibrated(
                    gauge,
                    master,
                    gauge.isPastOn(read.at().toLocalDate()),
                    master.isPastOn(set.at().toLocalDate()));
        });
    }

    /** Whether either was past its due day. */
    public boolean isPast() {
        return gaugePast || masterPast;
    }
}
