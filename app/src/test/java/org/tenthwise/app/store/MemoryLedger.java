package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.ReadFromEntries;
import org.tenthwise.app.history.RunName;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;

/**
 * A ledger that is gone with the test, quick enough for hundreds of thousands of runs: how entries would be stored is
 * worked out only where it is asked for.
 */
public final class MemoryLedger implements Ledger {

    private final List<Entry> entries = new ArrayList<>();
    private final Map<ImportEvent.Provenance, Map<Long, StoredEntry>> imported = new LinkedHashMap<>();

    @Override
    public List<Entry> append(List<NewEntry> added) {
        List<Entry> kept = new ArrayList<>();
        for (NewEntry entry : added) {
            kept.add(new Entry(entries.size() + kept.size() + 1L, entry.run(), entry.at(), entry.by(), entry.event()));
        }
        entries.addAll(kept);
        return kept;
    }

    @Override
    public Arrivals takeIn(Incoming incoming, OffsetDateTime at, String by) throws NotImported {
        Arrivals arrivals = ImportCheck.of(this, incoming);
        if (arrivals.addAnything()) {
            append(List.of(new NewEntry(Entry.SHOP, at, by, arrivals.event(incoming))));
            Map<Long, StoredEntry> there = imported.computeIfAbsent(arrivals.origin(), origin -> new TreeMap<>());
            arrivals.coming().forEach(run -> run.added().forEach(entry -> there.put(entry.seq(), entry)));
        }
        return arrivals;
    }

    @Override
    public List<ImportEvent.Provenance> origins() {
        return List.copyOf(imported.keySet());
    }

    @Override
    public Optional<StoredEntry> importedAt(String sign, long seq) {
        return Optional.ofNullable(from(sign).get(seq));
    }

    private Map<Long, StoredEntry> from(String sign) {
        return imported.entrySet().stream()
                .filter(origin -> origin.getKey().sign().equals(sign))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Map.of());
    }

    @Override
    public List<Entry> entries(String run) {
        if (RunName.of(run).isImported()) {
            return stored(run).stream()
                    .map(entry ->
                            ChainCheck.look(entry, entry.body().getBytes(UTF_8)).entry())
                    .toList();
        }
        return entries.stream().filter(entry -> entry.run().equals(run)).toList();
    }

    @Override
    public List<String> runs() {
        Stream<String> own = entries.stream().map(Entry::run).filter(run -> !run.equals(Entry.SHOP));
        Stream<String> others = imported.entrySet().stream().flatMap(origin -> origin.getValue().values().stream()
                .map(entry -> RunName.imported(entry.run(), origin.getKey().sign())));
        return Stream.concat(own, others).distinct().toList();
    }

    @Override
    public History history() {
        return new ReadFromEntries(this);
    }

    @Override
    public Head head() {
        return headAt(entries.size()).orElse(Head.OF_NOTHING);
    }

    @Override
    public Optional<Head> headAt(long seq) {
        return stored().stream()
                .filter(entry -> entry.seq() == seq)
                .map(StoredEntry::asHead)
                .findFirst();
    }

    @Override
    public RunHead runHead(String run) {
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : stored(run)) {
            head = head.and(entry);
        }
        return head;
    }

    @Override
    public boolean isSealed() {
        return stored().stream().anyMatch(entry -> entry.kind().equals("sealed"));
    }

    @Override
    public List<StoredEntry> stored() {
        List<StoredEntry> stored = new ArrayList<>();
        Head head = Head.OF_NOTHING;
        Map<String, RunHead> runs = new LinkedHashMap<>();
        for (Entry entry : entries) {
            RunHead run = runs.getOrDefault(entry.run(), RunHead.OF_NOTHING);
            StoredEntry next =
                    StoredEntry.behind(head, run, new NewEntry(entry.run(), entry.at(), entry.by(), entry.event()));
            stored.add(next);
            head = next.asHead();
            runs.put(entry.run(), run.and(next));
        }
        return stored;
    }

    @Override
    public List<StoredEntry> stored(String run) {
        RunName name = RunName.of(run);
        if (name.isImported()) {
            return from(name.origin().get()).values().stream()
                    .filter(entry -> entry.run().equals(name.run()))
                    .toList();
        }
        return stored().stream().filter(entry -> entry.run().equals(run)).toList();
    }

    @Override
    public Verification verify() {
        ChainCheck check = new ChainCheck();
        stored().forEach(entry -> check.next(ChainCheck.look(entry, entry.body().getBytes(UTF_8))));
        return check.result();
    }

    @Override
    public void close() {
        // nothing is held open
    }
}
