package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.ReadFromEntries;
import org.tenthwise.model.run.Entry;

/**
 * A ledger that is gone with the test, quick enough for hundreds of thousands of runs: how entries would be stored is
 * worked out only where it is asked for.
 */
public final class MemoryLedger implements Ledger {

    private final List<Entry> entries = new ArrayList<>();

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
    public List<Entry> entries(String run) {
        return entries.stream().filter(entry -> entry.run().equals(run)).toList();
    }

    @Override
    public List<String> runs() {
        return entries.stream()
                .map(Entry::run)
                .filter(run -> !run.equals(Entry.SHOP))
                .distinct()
                .toList();
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
