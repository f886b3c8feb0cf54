package org.tenthwise.app.session;

import java.util.HashMap;
import java.util.Map;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ShopEvent;

/** By what certificates the gauges of the shop, and what they are set on, are calibrated. What was said last counts. */
public final class CalibrationRack {

    private final KeptEntries kept;
    private Head readAt = Head.OF_NOTHING;
    private Map<GaugeOrMaster, Calibration> known = Map.of();

    public CalibrationRack(KeptEntries kept) {
        this.kept = kept;
    }

    /** Read anew only where something was entered since. */
    public Calibration find(GaugeOrMaster what) {
        Head now = kept.head();
        if (!now.equals(readAt)) {
            known = read();
            readAt = now;
        }
        return known.getOrDefault(what, Calibration.NOT_STATED);
    }

    private Map<GaugeOrMaster, Calibration> read() {
        Map<GaugeOrMaster, Calibration> last = new HashMap<>();
        kept.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(ShopEvent.CalibrationKnown.class).stream())
                .forEach(said -> last.put(said.what(), said.calibration()));
        return last;
    }
}
