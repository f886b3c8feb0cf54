package org.tenthwise.model.gauge;

import java.util.Optional;

/**
 * One gauge of the shop.
 *
 * @param id what is engraved on it, not blank
 * @param sense present for a kind that compares with a master, absent for any other
 */
public record Gauge(String id, GaugeKind kind, Optional<ReadingDirection> sense) {

    public Gauge {
        if (id.isBlank()) {
            throw new IllegalArgumentException("A gauge has a mark to know it by");
        }
        if (sense.isPresent() != (kind.reference() == GaugeKind.Reference.MASTER)) {
            throw new IllegalArgumentException("The sense of %s is %s for a %s"
                    .formatted(id, sense.isPresent() ? "given" : "missing", kind.key()));
        }
    }
}
