package org.tenthwise.app.session.hostile;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.ReadFromEntries;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;

/**
 * A ledger that is gone with the test, quick enough for hundreds of thousands of runs. What goes in comes out as it
 * would be read.
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
        throw new AssertionError("no record is written here");
    }

    @Override
    public RunHead runHead(String run) {
        throw new AssertionError("no record is written here");
    }

    @Override
    public List<StoredEntry> stored() {
        throw new AssertionError("no record is written here");
    }

    @Override
    public List<StoredEntry> stored(String run) {
        throw new AssertionError("no record is written here");
    }

    @Override
    public Verification verify() {
        throw new AssertionError("nothing can be damaged here");
    }

    @Override
    public void close() {
        // nothing is held open
    }
}
