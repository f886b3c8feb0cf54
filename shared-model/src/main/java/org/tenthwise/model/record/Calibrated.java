package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

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
        List<MadeWith> with = MadeWith.of(run, step, read);
        Optional<MadeWith> master = with.stream().skip(1).findFirst();
        return with.stream()
                .findFirst()
                .map(gauge -> new Calibrated(
                        gauge.calibration(),
                        master.map(MadeWith::calibration).orElse(Calibration.NOT_STATED),
                        gauge.isPast(),
                        master.filter(MadeWith::isPast).isPresent()));
    }

    /** Whether either was past its due day. */
    public boolean isPast() {
        return gaugePast || masterPast;
    }
}
