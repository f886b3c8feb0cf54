package org.tenthwise.app.session;

import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** By what certificates the gauges of the shop, and what they are set on, are calibrated. What was said last counts. */
public final class CalibrationRack {

    private final KeptEntries kept;

    public CalibrationRack(KeptEntries kept) {
        this.kept = kept;
    }

    public Calibration find(GaugeOrMaster what) {
        return kept.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(Event.CalibrationKnown.class).stream())
                .filter(known -> known.what().equals(what))
                .map(Event.CalibrationKnown::calibration)
                .reduce((earlier, later) -> later)
                .orElse(Calibration.NOT_STATED);
    }
}
