package org.tenthwise.app.session;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;

/** By what certificate the gauge of a step, or what it is set on, will be calibrated at the next reading. */
public record CalibratedHere(GaugeOrMaster what, Calibration calibration) {

    /** Whether a reading made then is made past its due day. */
    public boolean isPastAt(OffsetDateTime moment) {
        LocalDate day = moment.toLocalDate();
        return calibration.isPastOn(day);
    }
}
