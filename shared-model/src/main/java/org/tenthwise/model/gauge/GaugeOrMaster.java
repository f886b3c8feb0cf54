package org.tenthwise.model.gauge;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * What has a certificate of its own: a gauge, or the ring, block or wires that one is set on.
 *
 * @param mark what is engraved on it, not blank
 * @param kind key of the kind of a gauge; absent for a master and for wires
 */
public record GaugeOrMaster(String mark, Optional<String> kind) {

    public GaugeOrMaster {
        if (mark.isBlank()) {
            throw new Refused("model.gauge.gauge-mark");
        }
    }

    public static GaugeOrMaster of(Gauge gauge) {
        return gauge(gauge.id(), gauge.kind());
    }

    public static GaugeOrMaster gauge(String mark, GaugeKind kind) {
        return new GaugeOrMaster(mark, Optional.of(kind.key()));
    }

    public static GaugeOrMaster master(String mark) {
        return new GaugeOrMaster(mark, Optional.empty());
    }

    /** What a gauge was set on; absent for one that reads the size itself. */
    public static Optional<GaugeOrMaster> under(Setting setting) {
        return setting.reference().map(GaugeOrMaster::master);
    }
}
