package org.tenthwise.model.run;

import java.util.Map;
import java.util.TreeMap;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;

/**
 * By what certificates the gauges of a run were calibrated, and what they were set on, as the run itself says it: what
 * is said in another run, or later of the same gauge, changes nothing here.
 */
public final class RunCalibrations {

    private final Run run;

    RunCalibrations(Run run) {
        this.run = run;
    }

    /**
     * What holds for something at a place in the ledger. What was put right holds from where that began to hold which
     * was typed wrong: from the beginning of the run, where nothing was said before.
     */
    public Calibration of(GaugeOrMaster what, long seq) {
        Map.Entry<Long, Calibration> held = said(what).floorEntry(seq);
        return held == null ? Calibration.NOT_STATED : held.getValue();
    }

    /** What holds for it now. */
    public Calibration now(GaugeOrMaster what) {
        return of(what, Long.MAX_VALUE);
    }

    private TreeMap<Long, Calibration> said(GaugeOrMaster what) {
        TreeMap<Long, Calibration> said = new TreeMap<>();
        run.calibrationsKnown().forEach(entry -> entry.event()
                .as(ShopEvent.CalibrationKnown.class)
                .filter(known -> known.what().equals(what))
                .ifPresent(known -> said.put(
                        !known.putsRight()
                                ? entry.seq()
                                : said.isEmpty() ? run.entries().get(0).seq() : said.lastKey(),
                        known.calibration())));
        return said;
    }

    /** Whether a day is said of anything. */
    public boolean areDue() {
        return run.calibrationsKnown().stream()
                .flatMap(entry -> entry.event().as(ShopEvent.CalibrationKnown.class).stream())
                .anyMatch(known -> known.calibration().due().isPresent());
    }
}
