package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** The gauges whose sense the shop has been asked, from the ledger. What was told last counts. */
public final class GaugeRack {

    private final Ledger ledger;

    public GaugeRack(Ledger ledger) {
        this.ledger = ledger;
    }

    public Optional<Gauge> find(String mark, GaugeKind kind) {
        return gauges().filter(gauge -> gauge.id().equals(mark) && gauge.kind() == kind)
                .reduce((earlier, later) -> later);
    }

    /** Gauges of a kind, each once, as told last. */
    public List<Gauge> ofKind(GaugeKind kind) {
        return gauges().filter(gauge -> gauge.kind() == kind).map(Gauge::id).distinct()
                .flatMap(mark -> find(mark, kind).stream()).toList();
    }

    public void know(Gauge gauge, String by, OffsetDateTime at) throws CouldNotSave {
        ledger.append(Entry.SHOP, at, by, new Event.GaugeKnown(gauge));
    }

    private Stream<Gauge> gauges() {
        return ledger.entries(Entry.SHOP).stream().map(Entry::event)
                .flatMap(event -> event instanceof Event.GaugeKnown known ? Stream.of(known.gauge()) : Stream.empty());
    }
}
