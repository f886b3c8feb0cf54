package org.tenthwise.model.gauge;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * One gauge of the shop.
 *
 * @param id what is engraved on it, not blank
 * @param sense present for a kind that compares with a master, absent for any other
 */
public record Gauge(String id, GaugeKind kind, Optional<ReadingDirection> sense) {

    public Gauge {
        if (id.isBlank()) {
            throw new Refused("model.gauge.gauge-mark");
        }
        if (sense.isPresent() != (kind.reference() == GaugeKind.Reference.MASTER)) {
            throw new Refused("model.gauge.sense", id, sense.isPresent(), kind.key());
        }
    }
}
