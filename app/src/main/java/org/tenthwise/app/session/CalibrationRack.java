package org.tenthwise.app.session;

import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ShopEvent;

/** By what certificates the gauges of the shop, and what they are set on, are calibrated. What was said last counts. */
public final class CalibrationRack {

    private final KeptEntries kept;

    public CalibrationRack(KeptEntries kept) {
        this.kept = kept;
    }

    public Calibration find(GaugeOrMaster what) {
        return kept.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(ShopEvent.CalibrationKnown.class).stream())
                .filter(known -> known.what().equals(what))
                .map(ShopEvent.CalibrationKnown::calibration)
                .reduce((earlier, later) -> later)
                .orElse(Calibration.NOT_STATED);
    }
}
