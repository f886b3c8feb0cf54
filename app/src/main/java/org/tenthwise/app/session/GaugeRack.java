package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** The gauges whose sense the shop has been asked, from the ledger. What was told last and not struck out counts. */
public final class GaugeRack {

    private final KeptEntries kept;

    public GaugeRack(KeptEntries kept) {
        this.kept = kept;
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

    /** The entries that tell just this of a gauge. */
    List<Entry> told(Gauge gauge) {
        return counting().filter(entry -> ((Event.GaugeKnown) entry.event()).gauge().equals(gauge)).toList();
    }

    private Stream<Gauge> gauges() {
        return counting().map(entry -> ((Event.GaugeKnown) entry.event()).gauge());
    }

    private Stream<Entry> counting() {
        List<Entry> entries = kept.entries(Entry.SHOP);
        Set<Long> struck = entries.stream().flatMap(entry -> entry.event() instanceof Event.StruckOut out
                ? Stream.of(out.entry()) : Stream.empty()).collect(Collectors.toSet());
        return entries.stream().filter(entry -> entry.event() instanceof Event.GaugeKnown && !struck.contains(entry.seq()));
    }
}
