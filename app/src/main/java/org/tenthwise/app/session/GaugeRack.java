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
import org.tenthwise.model.run.ShopEvent;

/** The gauges whose sense the shop has been asked, from the ledger. What was told last and not struck out counts. */
public final class GaugeRack {

    private final KeptEntries kept;

    public GaugeRack(KeptEntries kept) {
        this.kept = kept;
    }

    /**
     * Absent as well where what was told last is struck out: what was told before it is not believed again by itself.
     */
    public Optional<Gauge> find(String mark, GaugeKind kind) {
        Set<Long> struck = struck();
        return known().filter(entry ->
                        gauge(entry).id().equals(mark) && gauge(entry).kind().equals(kind))
                .reduce((earlier, later) -> later)
                .filter(entry -> !struck.contains(entry.seq()))
                .map(GaugeRack::gauge);
    }

    /** Gauges of a kind, each once, as told last. */
    public List<Gauge> ofKind(GaugeKind kind) {
        return known().map(GaugeRack::gauge)
                .filter(gauge -> gauge.kind().equals(kind))
                .map(Gauge::id)
                .distinct()
                .flatMap(mark -> find(mark, kind).stream())
                .toList();
    }

    /** Marks of the gauges whose sense was struck out and has not been told since. */
    public List<String> inDoubt() {
        return doubts().stream().map(doubt -> doubt.gauge().id()).distinct().toList();
    }

    /**
     * A gauge whose sense was struck out and has not been told since.
     *
     * @param found the entry that struck it out
     */
    public record InDoubt(Gauge gauge, Entry found) {}

    /** All of them, each once, in the order they were told first. */
    public List<InDoubt> doubts() {
        return known().map(GaugeRack::gauge)
                .map(gauge -> new Named(gauge.id(), gauge.kind()))
                .distinct()
                .filter(named -> find(named.mark(), named.kind()).isEmpty())
                .flatMap(named -> struckOut(named).stream())
                .toList();
    }

    private record Named(String mark, GaugeKind kind) {}

    private Optional<InDoubt> struckOut(Named named) {
        return known().filter(entry -> new Named(gauge(entry).id(), gauge(entry).kind()).equals(named))
                .reduce((earlier, later) -> later)
                .flatMap(last -> kept.entries(Entry.SHOP).stream()
                        .filter(entry -> entry.event()
                                .as(Event.StruckOut.class)
                                .filter(out -> out.entry() == last.seq())
                                .isPresent())
                        .reduce((earlier, later) -> later)
                        .map(found -> new InDoubt(gauge(last), found)));
    }

    /** The entries that tell just this of a gauge and are not struck out. */
    List<Entry> told(Gauge gauge) {
        Set<Long> struck = struck();
        return known().filter(entry -> gauge(entry).equals(gauge) && !struck.contains(entry.seq()))
                .toList();
    }

    private Stream<Entry> known() {
        return kept.entries(Entry.SHOP).stream()
                .filter(entry -> entry.event().as(ShopEvent.GaugeKnown.class).isPresent());
    }

    private Set<Long> struck() {
        return kept.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(Event.StruckOut.class).stream())
                .map(Event.StruckOut::entry)
                .collect(Collectors.toSet());
    }

    private static Gauge gauge(Entry known) {
        return ((ShopEvent.GaugeKnown) known.event()).gauge();
    }
}
